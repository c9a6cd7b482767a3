declare module 'heic-decode' {
  /** Pixels of the first picture, RGBA, upright already. */
  export default function decode(input: {
    buffer: ArrayBufferLike | Uint8Array;
  }): Promise<{ width: number; height: number; data: Uint8ClampedArray }>;
}
