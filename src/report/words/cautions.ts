import type { Danger } from '../../engine/scenario/inputs/scenario.ts';

/**
 * Brief and usual cautions for each danger. Common practice, no source: none of them replaces the maker's procedure.
 */
export const cautionWords: Readonly<Record<Danger, string>> = {
  lifting:
    'Never under a vehicle that only a jack holds: level ground, wheels chocked, rated stands, and a push to test it first.',
  brakes:
    'Dust from old linings can harm lungs: wipe it wet, never blow it. Pump the pedal firm before the wheels turn.',
  steering:
    'Hold every fastener to the stated torque, fit new locking parts, and have the alignment checked before road speed.',
  exhaust:
    'Hot parts and fumes: let it cool, run the engine only in the open, and treat fumes in the cabin as a reason not to drive.',
  airbag: 'Airbags and belt tensioners can fire while being handled: work for qualified people only.',
  fuel: 'Let pressure off first, work outdoors away from any flame or spark, and keep an extinguisher within reach.',
  battery:
    'Disconnect the negative lead first and connect it last; no flame near it, eyes covered, acid rinsed off at once.',
  'high-voltage': 'Orange cables can kill even with the key out: work for qualified people only.',
  structure:
    'What carries the load is cut, welded or pulled only by qualified people, with the vehicle measured afterwards.',
};

/** What stands above all of them. */
export const DEFER =
  "The maker's procedure comes before anything said here; where local rules or a licence reserve the work, they decide.";
