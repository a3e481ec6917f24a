package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunCodesTest {
    private final List<RunCodes.Line> lines = RunCodes.read();

    /** ITU-T T.4 Tables 2, 3a and 3b: 64 terminating and 27 make-up codes a colour, 13 extended ones. */
    @Test
    void tablesAreWhole() {
        assertEquals(List.of(64L, 27L, 13L), Stream.of('T', 'M', 'X').map(kind -> lines.stream().filter(line -> line.kind() == kind).count()).toList());
    }

    /** Code words of ITU-T T.4, Tables 2, 3a and 3b. */
    @ParameterizedTest
    @CsvSource({"0, 00110101, 0000110111", "1, 000111, 010", "63, 00110100, 000001100111", "64, 11011, 0000001111", "1728, 010011011, 0000001100101",
            "1792, 00000001000, 00000001000", "2560, 000000011111, 000000011111"})
    void codesAreThoseOfTheStandard(int run, String white, String black) {
        RunCodes.Line line = lines.stream().filter(l -> l.run() == run).findFirst().orElseThrow();
        assertEquals(white, line.white());
        assertEquals(black, line.black());
    }

    @ParameterizedTest
    @CsvSource({"0", "1"})
    void noCodeBeginsWithAnother(int colour) {
        List<String> words = lines.stream().map(line -> line.word(colour)).toList();
        for (String word : words) {
            assertEquals(1, words.stream().filter(word::startsWith).count(), word);
            assertFalse("00000001".startsWith(word), "would hide the end of line: " + word);
        }
    }

    /** Make-up and terminating code of one run in one entry. */
    @Test
    void runsAreMakeUpAndTerminatingCode() {
        assertEquals("11011" + "000111", bits(RunCodes.T4.words(RunCodes.WHITE)[65]));
        assertEquals("0000001111" + "0000110111", bits(RunCodes.T4.words(RunCodes.BLACK)[64]));
        assertEquals("000000011111" + "000001100111", bits(RunCodes.T4.words(RunCodes.BLACK)[2623]));
    }

    private static String bits(int packed) {
        String bits = Integer.toBinaryString(packed >>> RunCodes.LENGTH_BITS);
        return "0".repeat((packed & 31) - bits.length()) + bits;
    }
}
