package saddlebar.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.Refusal;

class SpectrumFileTest {
    private static String table(String names, int from, int to, int step) {
        var text = new StringBuilder("# reading\n" + names + "\n");
        for (int nm = from; nm <= to; nm += step) {
            text.append(nm).append(',').append((nm - 300) / 1000.0).append('\n');
        }
        return text.toString();
    }

    @Test
    void betweenReadingsStraightAndBeyondThemHeld() {
        Spectrum spectrum = SpectrumFile.read("amber.csv", table("nm,transmittance", 400, 700, 20));
        assertEquals(.1, spectrum.at(0), 1e-12);
        assertEquals(.105, spectrum.at(5), 1e-12);
        assertEquals(.4, spectrum.at(80), 1e-12);
        assertEquals(.0025, SpectrumFile.read("amber.csv", table("nm,percent", 400, 700, 20)).at(34), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nm,transmittance\n", "wave,share\n400,1\n", "nm,transmittance\n400,.5\n700,.5\n", "nm,transmittance\n400,x\n",
            "nm,transmittance\n400\n",
            "nm,transmittance\n400,NaN\n", "nm,transmittance,percent\n400,1,1\n"})
    void whatIsNoSpectrum(String text) {
        Refusal refusal = assertThrows(Refusal.class, () -> SpectrumFile.read("amber.csv", text));
        assertTrue(refusal.getMessage().startsWith("amber.csv"), refusal.getMessage());
    }

    @Test
    void perCentAsSharesIsTold() {
        String text = table("nm,transmittance", 400, 700, 10).replace(",0.", ",40.");
        assertTrue(assertThrows(Refusal.class, () -> SpectrumFile.read("a.csv", text)).getMessage().contains("per cent"));
    }
}
