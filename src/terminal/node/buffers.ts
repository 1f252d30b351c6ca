/** The memory behind every typed array in plain data, once each: what can be handed over instead of copied. */
export const buffersOf = (data: unknown): ArrayBuffer[] => {
  const found = new Set<ArrayBuffer>();
  const look = (value: unknown): void => {
    if (ArrayBuffer.isView(value)) {
      if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
    } else if (typeof value === 'object' && value !== null) {
      for (const part of Object.values(value)) look(part);
    }
  };
  look(data);
  return [...found];
};
