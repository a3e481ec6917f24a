package saddlebar.ui.colourway;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.colour.Srgb;

class ColourInWordsTest {
    /** Colours that have these names in the CSS Color Module Level 4 (W3C): gold, teal, navy and so on, in plain words. */
    @ParameterizedTest
    @CsvSource({"#ffffff,clear", "#d3d3d3,light gray", "#808080,gray", "#000000,black", "#ff0000,red", "#ffa500,orange", "#ffff00,pale yellow",
            "#8b4513,deep brown", "#008000,green", "#0000ff,deep violet", "#4682b4,blue", "#008080,blue green", "#ee82ee,purple", "#ffb6c1,rose",
            "#000080,very dark violet", "#808000,yellow"})
    void namedAsPeopleNameThem(String hex, String words) {
        assertEquals(words, ColourInWords.of(Srgb.parse(hex).orElseThrow().lab()), hex);
    }
}
