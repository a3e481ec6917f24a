package saddlebar.nesting.read;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;

/** Hands a text on one line at a time, so that whoever asks knows in which line a parser is that reads no further than it must. */
final class LineReader extends Reader {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private final BufferedReader text;
    private String line = "";
    private int at;
    private int number;

    LineReader(Reader text) throws IOException {
        this.text = new BufferedReader(text);
        skipByteOrderMark(this.text);
    }

    /** Some programs put such a mark before the first letter. */
    static void skipByteOrderMark(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != BYTE_ORDER_MARK) {
            text.reset();
        }
    }

    /** Number of the line that was handed on last, from 1. */
    int line() {
        return Math.max(1, number);
    }

    @Override
    public int read(char[] buffer, int from, int most) throws IOException {
        if (at == line.length()) {
            String next = text.readLine();
            if (next == null) {
                return -1;
            }
            line = next + "\n";
            at = 0;
            number++;
        }
        int count = Math.min(most, line.length() - at);
        line.getChars(at, at + count, buffer, from);
        at += count;
        return count;
    }

    @Override
    public void close() throws IOException {
        text.close();
    }
}
