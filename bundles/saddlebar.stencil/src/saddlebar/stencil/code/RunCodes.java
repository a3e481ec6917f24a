package saddlebar.stencil.code;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Code words of runs of equal px: 64 terminating and 27 make-up codes a colour, 13 extended make-up codes for both.
 * <p>Source: ITU-T T.4, Tables 2 (terminating), 3a (make-up) and 3b (extended make-up), in {@code t4-runs.csv}.
 */
final class RunCodes {
    static final int WHITE = 0;
    static final int BLACK = 1;
    /** Longest run with one make-up code: 2560 + 63. Longer runs repeat the make-up code of {@link #REPEATED}. */
    static final int LONGEST = 2623;
    static final int REPEATED = 2560;
    static final int REPEATED_CODE = 0b000000011111;
    static final int REPEATED_BITS = 12;
    /** A decoder looks at so many bits at once: the longest code word, a black make-up code. */
    static final int LOOK_BITS = 13;
    /** Each code's lowest bits in a packed entry hold its length. */
    static final int LENGTH_BITS = 5;

    static final RunCodes T4 = new RunCodes(read());

    /** One line of the standard's tables; the kind is T, M or X. */
    record Line(char kind, int run, String white, String black) {
        String word(int colour) {
            return colour == WHITE ? white : black;
        }
    }

    private final int[][] words = new int[2][LONGEST + 1];
    private final char[][] looked = new char[2][1 << LOOK_BITS];

    private RunCodes(List<Line> lines) {
        for (int colour = WHITE; colour <= BLACK; colour++) {
            String[] terminating = new String[64];
            String[] makeUp = new String[REPEATED / 64 + 1];
            makeUp[0] = "";
            for (Line line : lines) {
                String word = line.word(colour);
                if (line.kind == 'T') {
                    terminating[line.run] = word;
                } else {
                    makeUp[line.run / 64] = word;
                }
                int free = LOOK_BITS - word.length();
                int first = Integer.parseInt(word, 2) << free;
                for (int rest = 0; rest < 1 << free; rest++) {
                    looked[colour][first + rest] = (char) (line.run << 4 | word.length());
                }
            }
            for (int run = 0; run <= LONGEST; run++) {
                String word = makeUp[run / 64] + terminating[run % 64];
                words[colour][run] = Integer.parseInt(word, 2) << LENGTH_BITS | word.length();
            }
        }
    }

    /** Make-up and terminating code of each run of 0 to {@link #LONGEST} px: {@code code << 5 | length in bits}. Not to be changed. */
    int[] words(int colour) {
        return words[colour];
    }

    /** For each value of the next 13 bits {@code run << 4 | length in bits}, 0 where no code word begins so. Not to be changed. */
    char[] looked(int colour) {
        return looked[colour];
    }

    static List<Line> read() {
        try (InputStream in = RunCodes.class.getResourceAsStream("t4-runs.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            return lines.lines().filter(line -> !line.startsWith("#") && !line.startsWith("kind")).map(line -> line.split(","))
                    .map(cells -> new Line(cells[0].charAt(0), Integer.parseInt(cells[1]), cells[2], cells[3])).toList();
        } catch (IOException e) {
            throw new IllegalStateException("the table of run codes in this bundle cannot be read", e);
        }
    }
}
