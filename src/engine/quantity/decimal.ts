import { Decimal as GlobalDecimal } from 'decimal.js';

/** Decimal arithmetic for what a contract fixes to the cent; a clone, because the library's settings are global. */
export const Decimal = GlobalDecimal.clone({ precision: 34, rounding: GlobalDecimal.ROUND_HALF_UP });
export type Decimal = InstanceType<typeof Decimal>;
