/** Short first names and common words, those of our own sentences, keys and choices among them. */
export const COMMON_WORDS: readonly string[] = `
Al Amy Ana Ann Art Ava Bea Ben Bo Bob Bud Cal Cam Cy Dan Del Di Dot Ed Eli Ella Em Eva Fay Flo Gus Guy Hal Ian Ike Ina Ira
Ivy Jan Jay Jim Joe Jon Joy Ken Kim Kit Lea Lee Len Leo Liv Lou Lu Mac Max May Meg Mel Mia Mo Nan Ned Nia Nora Ora Pam Pat
Peg Rae Ray Rex Rob Ron Roy Sal Sam Sid Sky Sue Tad Ted Tim Tom Ty Uma Val Van Vic Wes Will Wyn Yan Zed Zoë André Jürgen
Keep Own Shop Private Partner Mechanic Job Part Fee Item Look Line Vehicle Present Other Loan Lease Cash Price Year Month
Day Mile Hour Money Table Guess Quoted Measured Range Low High Likely Value Source Note Name What Yes No Maybe Ever Never
Replace Hand Sell Sale Trade Scrap Mend Repair Fix Patch Left Wait Tow Fuel Energy Tax Fees Insurance Cover Claim Place Tier
Cost Total True False Null And The Not All Any Each Best Worst Half Even Pay Walk Away Day Lifting Brakes Safety Airbag Rust
Sound None Unknown New Used Hope Grace Rose Mark Frank Rich Bill Penny Grant Miles Chase Dawn June April Summer Sunny Cliff
O'Neil Jean-Luc
`
  .trim()
  .split(/\s+/);
