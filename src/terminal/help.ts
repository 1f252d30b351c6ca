/** What `--help` prints. */
export const helpText = (version: string): string => `stillworth ${version}
Mend the older vehicle, or hand it on and take a payment?

  stillworth new FILE      write a starting scenario to fill in; it never overwrites
  stillworth check FILE    say everything that is wrong with a scenario, or that nothing is
  stillworth report FILE   print the answer and write the report, one HTML file
      --out FILE           where the report goes; unless told, beside the scenario, ending in .html
      --json               print the whole decision as JSON instead, and write no file
      --force              write over a file that is not a report made by this program
      --futures N          how many ways it could go to draw, 1,024 to 1,048,576, rounded up to 16 sets of a
                           power of two; 0 for none, and no word on chance; unless told, what the file says
      --seed N             what they are drawn from, 0 to 4,294,967,295; the same seed gives the same figures
      --set PLACE=FIGURE   one number changed for a look: --set vehicle.odometer=180000; as often as wanted, with bill and
                           costs too. The scenario stays as it is, and the report's name ends in -look.html
  stillworth bill FILE COMPONENT AMOUNT
                           the shop is on the phone: pay it, do it at home, or let the vehicle go; COMPONENT is one
                           of the file's, or its beginning, or "anything else"; AMOUNT is parts and labour (own hours
                           at what they are worth), not the tow or the diagnosis; days without it are added
      --json               the same as JSON
  stillworth costs FILE    every cost, line by line, as CSV, to standard output
      --out FILE           to a file instead
      --force              write over a file that is already there
  stillworth --help        this text
  stillworth --version     the version

Use - for FILE to read the scenario from standard input.
A colour-free terminal: set NO_COLOR.

Exit codes: 0 done; 1 something in the scenario is wrong, and standard error says what and where;
2 the command cannot be carried out as given; 3 a fault of the program itself.

Nothing is sent anywhere. What it prints is information, not advice.
`;
