/** An invented scenario in the short form, for tests that need any sound one; a near horizon makes it quick. */
export const SHORT = `miles_a_year: 9000
spare_each_month: 300
savings_for_this: 2500
household: { look_ahead: 12, mechanic: Wren }
vehicle:
  what: 2009 wagon
  odometer: 171000
  price_when_new: 19000
  sells_for: { running: 3400, as_it_stands: 900, trade_in: 600 }
  insurance_a_year: 620
work_needed:
  - { job: head gasket, parts: 640, hours: 22, shop_price: 2900, can_wait: no }
  - { job: front brakes, parts: 140, hours: 4, shop_price: 520, can_wait: no, safety: yes }
replacement:
  what: 2021 hatchback
  odometer: 38000
  price_with_all_fees: 17800
  down_payment: 2000
  loan: { apr: 8.9, months: 66 }
  insurance_a_year: 1350
`;
