package saddlebar.nesting.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Turns;

class RectangleListTest {
    @Test
    void readsTheColumnsInAnyOrder() throws IOException {
        List<NestItem> items = read("\uFEFF# stencils\r\nquantity,id,note,width_mm,rotate,height_mm\r\n2,W01/matt,,120.5,half,80\r\n"
                + ",\"a,b\",x,10,,20\r\n\r\n1,c,,1e1,FREE,3\r\n");
        assertEquals(List.of("W01/matt", "a,b", "c"), items.stream().map(NestItem::id).toList());
        assertEquals(List.of(2, 1, 1), items.stream().map(NestItem::quantity).toList());
        assertEquals(List.of(Turns.HALF, Turns.NONE, Turns.FREE), items.stream().map(NestItem::turns).toList());
        assertEquals(120.5, items.get(0).widthMm());
        assertEquals(0, items.get(0).outline().getEnvelopeInternal().getMinX(), "its own origin is its top left");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
            "id,width_mm,height_mm;a,10,20;b,x,20 | f.csv:3: width_mm is 'x'; give a length in mm above 0, such as 120 or 84.5",
            "id,width_mm,height_mm;a,10, | f.csv:2: height_mm is ''; give a length in mm above 0, such as 120 or 84.5",
            "id,width_mm,height_mm;a,NaN,1 | f.csv:2: width_mm is 'NaN'; give a length in mm above 0, such as 120 or 84.5",
            "id,width_mm,height_mm;a,-3,1 | f.csv:2: width_mm is '-3'; give a length in mm above 0, such as 120 or 84.5",
            "id,width_mm,height_mm;a,10 | f.csv:2: height_mm is ''; give a length in mm above 0, such as 120 or 84.5",
            "id,width_mm,height_mm;a,1e9,1 | f.csv:2: its outline has the point (1000000000, 0); give coordinates that are numbers of at most 1000000 mm",
            "id,width_mm,height_mm,quantity;a,1,1,0 | f.csv:2: quantity is '0'; give a whole number from 1 to 100000",
            "id,width_mm,height_mm,quantity;a,1,1,2.5 | f.csv:2: quantity is '2.5'; give a whole number from 1 to 100000",
            "id,width_mm,height_mm,rotate;a,1,1,often | f.csv:2: rotate is 'often'; write no, half, quarter or free",
            "id,width_mm,height_mm;a,1,1;b,2,2;a,3,3 | f.csv:4: the id a is that of line 2 too; give each item an id of its own",
            "id,width_mm,height_mm;,1,1 | f.csv:2: it has no id; give each item an id of its own",
            "id,width_mm;a,1 | f.csv:1: it has no column height_mm; give the columns id,width_mm,height_mm,quantity,rotate a first line of their own",
            "id,id,width_mm,height_mm;a,a,1,1 | f.csv:1: its first line does not name each column once; give the columns id,width_mm,height_mm,quantity,rotate a first line of their own",
            "id,width_mm,height_mm | f.csv: it lists no item; write one line an item below the line of column names",
            "id,width_mm,height_mm;\"a,1,1 | f.csv:2: it is not comma-separated text; close every quotation mark and write the file anew",
            "# sizes;;id,width_mm,height_mm;a,1,1;;\"b,2,2;c,3,3;d,4,4 | f.csv:6: it is not comma-separated text; close every quotation mark and write the file anew",
            "id,width_mm,height_mm;a,1,1;b,\"2,2;# c;d,4,4 | f.csv:3: it is not comma-separated text; close every quotation mark and write the file anew",
            "id,\"width_mm,height_mm;a,1,1 | f.csv:1: it is not comma-separated text; close every quotation mark and write the file anew",
            "id,width_mm,height_mm;\"a\" x,1,1;b,2,2 | f.csv:2: it is not comma-separated text; close every quotation mark and write the file anew",
            "id,width_mm,height_mm,id ;a,1,1,b | f.csv:1: its first line does not name each column once; give the columns id,width_mm,height_mm,quantity,rotate a first line of their own"})
    void refusesWithFileAndLine(String csv, String message) {
        assertEquals(message, assertThrows(Refusal.class, () -> read(csv.replace(';', '\n'))).getMessage());
    }

    @Test
    void marksWithinACellAndOverTwoLinesAreRead() throws IOException {
        List<NestItem> items = read("id,width_mm,height_mm,,\n\"a \"\"left\"\"\",1,2,,\n\"b\nbelow\",3,4,,\n5\" sheet,6,7,,\n");
        assertEquals(List.of("a \"left\"", "b\nbelow", "5\" sheet"), items.stream().map(NestItem::id).toList());
    }

    @Test
    void refusesAnEmptyFile() {
        assertEquals("f.csv:1: it has no column id; give the columns id,width_mm,height_mm,quantity,rotate a first line of their own",
                assertThrows(Refusal.class, () -> read("")).getMessage());
    }

    private static List<NestItem> read(String csv) throws IOException {
        return RectangleList.read(new StringReader(csv), "f.csv");
    }
}
