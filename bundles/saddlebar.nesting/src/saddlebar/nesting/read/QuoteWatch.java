package saddlebar.nesting.read;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Hands comma-separated text on and keeps in mind where a cell in quotation marks began that nothing has ended yet, and where text stands
 * behind a closing mark. A parser only knows where it gave up, which for a forgotten mark is the end of the file.
 */
final class QuoteWatch extends FilterReader {
    private enum At {
        LINE_START, CELL_START, PLAIN, QUOTED, BEHIND_QUOTE, COMMENT
    }

    private At at = At.LINE_START;
    private long line = 1;
    private long opened;
    private long faulty;
    private boolean afterReturn;

    QuoteWatch(Reader text) {
        super(text);
    }

    /** The line, from 1, of the mark that is at fault: of text behind a closing mark, else of the mark that is not closed; 0 if there is none. */
    long faultyLine() {
        return faulty > 0 ? faulty : at == At.QUOTED ? opened : 0;
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        if (c >= 0) {
            see((char) c);
        }
        return c;
    }

    @Override
    public int read(char[] buffer, int from, int most) throws IOException {
        int count = super.read(buffer, from, most);
        for (int i = 0; i < count; i++) {
            see(buffer[from + i]);
        }
        return count;
    }

    private void see(char c) {
        boolean ends = c == '\n' || c == '\r';
        if (c == '\r' || c == '\n' && !afterReturn) {
            line++;
        }
        afterReturn = c == '\r';
        if (ends && at != At.QUOTED) {
            at = At.LINE_START;
            return;
        }
        switch (at) {
            case LINE_START, CELL_START -> beginCell(c);
            case PLAIN -> at = c == ',' ? At.CELL_START : At.PLAIN;
            case QUOTED -> at = c == '"' ? At.BEHIND_QUOTE : At.QUOTED;
            case BEHIND_QUOTE -> behindQuote(c);
            default -> {
                // a comment lasts to the end of its line
            }
        }
    }

    private void beginCell(char c) {
        if (c == '#' && at == At.LINE_START) {
            at = At.COMMENT;
        } else if (c == '"') {
            at = At.QUOTED;
            opened = line;
        } else if (c == ',') {
            at = At.CELL_START;
        } else if (!Character.isWhitespace(c)) {
            at = At.PLAIN;
        }
    }

    private void behindQuote(char c) {
        if (c == '"') {
            at = At.QUOTED; // two marks within a cell stand for one
        } else if (c == ',') {
            at = At.CELL_START;
        } else if (!Character.isWhitespace(c) && faulty == 0) {
            faulty = line;
        }
    }
}
