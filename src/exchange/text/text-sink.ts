/** Takes the text of a file in blocks cut anywhere. */
export interface TextSink<Result> {
  push(text: string): void;
  /** Ends the text. */
  end(): Result;
}

/** A sink for what can only be read whole. */
export function gatherText<Result>(read: (text: string) => Result): TextSink<Result> {
  const blocks: string[] = [];
  return {
    push: (text) => void blocks.push(text),
    end() {
      const text = blocks.join('');
      blocks.length = 0;
      return read(text);
    },
  };
}
