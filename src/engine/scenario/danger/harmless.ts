import { each } from './dangerWords.ts';

// What sounds like something that can be dangerous, and is not.

export const NO_LIFT = [
  ...each('tailgate, hatch, boot, bonnet, hood, trunk, gas', 'strut, spring, shock, damper'),
];
export const NO_SPRING = ['spring clean*', 'clock spring', ...each('seat, door', 'spring'), ...NO_LIFT];
export const NO_STEERING = each(
  'steering wheel',
  'cover, leather, button, control, switch*, heat*, trim, rim, lock, airbag',
).concat('heated steering wheel');
export const NO_WHEEL = [
  ...NO_STEERING,
  ...each('wheel', 'trim, cover, arch*, well, liner, cap'),
  'spare wheel',
];
export const NO_FRAME = [
  ...each(
    'subframe, sub frame, frame, chassis, body mount',
    'bush*, front bush*, rear bush*, mount bush*, mounting bush*',
  ),
  ...each('bush* of the, bush* on the, bush* for the', 'subframe, sub frame, frame, chassis'),
  ...each('plate, window, door, sunroof, mirror, radiator, screen', 'frame'),
  ...each('frame for the, frame of the, frame around the', 'number plate, license plate, licence plate'),
  ...each('sill', 'trim, cover, plate, protector'),
  ...each('floor', 'mat, carpet, liner'),
  ...each('window, door', 'sill'),
];
