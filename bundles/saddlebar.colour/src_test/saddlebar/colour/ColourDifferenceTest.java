package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ColourDifferenceTest {
    /** All 34 pairs of Sharma, Wu, Dalal 2005, Table 1, both ways; the table has four decimals. */
    @Test
    void thePublishedPairs() throws IOException {
        List<String> rows;
        try (var in = new BufferedReader(new InputStreamReader(getClass().getResourceAsStream("ciede2000-sharma2005.csv"), StandardCharsets.UTF_8))) {
            rows = in.lines().filter(line -> !line.startsWith("#") && !line.startsWith("L1")).toList();
        }
        assertEquals(34, rows.size());
        for (String row : rows) {
            double[] n = Arrays.stream(row.split(",")).mapToDouble(Double::parseDouble).toArray();
            Lab one = new Lab(n[0], n[1], n[2]);
            Lab two = new Lab(n[3], n[4], n[5]);
            assertEquals(n[6], ColourDifference.ciede2000(one, two), 5.1e-5, row);
            assertEquals(n[6], ColourDifference.ciede2000(two, one), 5.1e-5, row);
        }
    }

    @Property
    void symmetricAndZeroOnlyForTheSame(@ForAll @DoubleRange(min = 0, max = 100) double l, @ForAll @DoubleRange(min = -128, max = 128) double a,
            @ForAll @DoubleRange(min = -128, max = 128) double b, @ForAll @DoubleRange(min = 0, max = 100) double l2,
            @ForAll @DoubleRange(min = -128, max = 128) double a2, @ForAll @DoubleRange(min = -128, max = 128) double b2) {
        Lab one = new Lab(l, a, b);
        Lab two = new Lab(l2, a2, b2);
        assertEquals(0, ColourDifference.ciede2000(one, one), 0);
        double there = ColourDifference.ciede2000(one, two);
        assertTrue(there >= 0);
        assertEquals(there, ColourDifference.ciede2000(two, one), 1e-9);
    }

    @Test
    void verdicts() {
        Lab approved = new Lab(50, 0, 0);
        assertEquals(ColourMatch.Verdict.ALIKE, ColourMatch.of(new Lab(50.5, 0, 0), approved).verdict());
        assertEquals(ColourMatch.Verdict.ACCEPTABLE, ColourMatch.of(new Lab(52, 0, 0), approved).verdict());
        assertEquals(ColourMatch.Verdict.DIFFERENT, ColourMatch.of(new Lab(60, 0, 0), approved).verdict());
    }
}
