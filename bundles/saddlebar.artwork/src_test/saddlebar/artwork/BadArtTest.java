package saddlebar.artwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.GZIPOutputStream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.Refusal;

/** Files that are no art, damaged or meant to harm: each is refused in one sentence that says where, or read as far as it makes sense and told. */
class BadArtTest {
    private static final String SVG = "<svg " + Art.NAMESPACES + " width='10mm' height='10mm'>";

    @TempDir
    Path folder;

    private Path file(String name, String text) {
        return file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private Path file(String name, byte[] bytes) {
        try {
            return Files.write(folder.resolve(name), bytes);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String refused(Path file) {
        String message = assertThrows(Refusal.class, () -> Art.read(file)).getMessage();
        assertTrue(message.startsWith(file.getFileName().toString()), message);
        assertTrue(!message.contains("\n") && !message.contains("Exception"), message);
        return message;
    }

    @Test
    void noFile() {
        assertEquals("none.svg: there is no such file in " + folder + "; check the name and the folder", refused(folder.resolve("none.svg")));
        assertTrue(refused(folder).contains("this is a folder, not a file"));
        assertTrue(refused(file("empty.svg", "")).contains("the file is empty"));
    }

    @Test
    void junk() {
        byte[] junk = new byte[20_000];
        new Random(5).nextBytes(junk);
        junk[0] = 1;
        assertTrue(refused(file("junk.bin", junk)).contains("no kind of artwork"));
        assertTrue(refused(file("junk.svg", junk)).startsWith("junk.svg:1: "));
        assertTrue(refused(file("notes.txt", "a list of colours")).contains("save it as"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"hello | bad.svg:1: this is no well-formed XML", "<svg> | bad.svg", "<html/> | begins with <html>",
            "<svg xmlns='http://www.w3.org/2000/svg'>~<g>~</svg> | bad.svg:3: this is no well-formed XML", "<?xml version='1.0'?> | bad.svg"})
    void notADrawing(String text, String words) {
        assertTrue(refused(file("bad.svg", text.replace('~', '\n'))).contains(words));
    }

    @Test
    void entities() {
        StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'ha'>");
        for (int i = 1; i < 30; i++) {
            laughs.append("<!ENTITY a").append(i).append(" '").append(("&a" + (i - 1) + ";").repeat(10)).append("'>");
        }
        assertTrue(refused(file("bomb.svg", laughs + "]>\n" + SVG + "<text>&a29;</text></svg>")).contains("declares the entity a0"));
        Path secret = file("secret.txt", "secret");
        assertTrue(refused(file("outer.svg", "<!DOCTYPE svg [<!ENTITY x SYSTEM '" + secret.toUri() + "'>]>\n" + SVG + "<text>&x;</text></svg>"))
                .contains("declares the entity x of another file"));
        assertTrue(refused(file("parameter.svg", "<!DOCTYPE svg [<!ENTITY % x SYSTEM '" + secret.toUri() + "'> %x;]>\n" + SVG + "</svg>"))
                .contains("entit"));
        assertTrue(Art.read(file("plain.svg", "<!DOCTYPE svg>" + SVG + "</svg>")).warnings().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<path d='M0 0L1e30 0' stroke='black'/>", "<rect x='-1e20' width='1e21' height='5'/>", "<circle r='1e12'/>",
            "<g transform='scale(1e15)'><rect width='5' height='5'/></g>"})
    void nobodyKnowsWhere(String content) {
        String message = refused(file("far.svg", SVG + "\n" + content + "</svg>"));
        assertTrue(message.startsWith("far.svg:2: ") && message.contains("more than ten kilometres away"), message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<path d='M0 0L NaN 3' stroke='black'/>", "<rect x='NaN' width='5' height='5'/>", "<g transform='scale(NaN)'><rect width='5'/></g>"})
    void noNumbers(String content) {
        String message = refused(file("nan.svg", SVG + "\n" + content + "</svg>"));
        assertTrue(message.startsWith("nan.svg:2: ") && message.contains("holds a number that is none"), message);
    }

    @ParameterizedTest
    @CsvSource({"0,5", "-3,5", "0mm,1mm", "1e12,5", "1e300mm,5mm"})
    void pagesWithoutSize(String width, String height) {
        assertTrue(refused(file("size.svg", "<svg " + Art.NAMESPACES + " width='" + width + "' height='" + height + "'/>")).startsWith("size.svg:1: "));
    }

    @Test
    void depthAndNumber() {
        assertTrue(refused(file("deep.svg", SVG + "<g>".repeat(1_000_000))).contains("groups lie in groups more than 400 deep"));
        StringBuilder copies = new StringBuilder(SVG + "<defs><g id='u0'><rect width='1' height='1'/></g>");
        for (int i = 1; i < 30; i++) {
            copies.append("<g id='u").append(i).append("'>").append(("<use href='#u" + (i - 1) + "'/>").repeat(10)).append("</g>");
        }
        assertTrue(refused(file("copies.svg", copies + "</defs><use href='#u29'/></svg>")).contains("with all copies the drawing has more than"));
        assertTrue(Art.svg(folder, SVG + "<g id='a'><use href='#a'/><rect width='5' height='5'/></g></svg>").warns("art-reference", "it is itself a part"));
        assertTrue(Art.svg(folder, SVG + "<pattern id='p' width='1' height='1'><rect width='1' height='1' fill='url(#p)'/></pattern>"
                + "<rect width='5' height='5' fill='url(#p)'/></svg>").warns("art-reference", "it is itself a part"));
    }

    @Test
    void styles() {
        Art loop = Art.svg(folder, SVG + "<style>@import url('art.svg'); :root { --a: var(--b); --b: var(--a) } rect { fill: var(--a) }</style>"
                + "<rect width='5' height='5'/></svg>");
        assertTrue(loop.warns("art-style", "a style sheet outside the drawing is not read"));
        assertTrue(Art.svg(folder, SVG + "<style>" + "@media all {".repeat(5000) + "</style><rect width='5' height='5'/></svg>").lines().size() == 1);
    }

    @Test
    void packedBomb() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write((SVG + "<!--").getBytes(StandardCharsets.US_ASCII));
            byte[] some = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 300; i++) {
                out.write(some);
            }
        }
        String message = refused(file("bomb.svgz", packed.toByteArray()));
        assertTrue(message.contains("holds more than 256 MB of text") || message.contains("more text than there is memory for"), message);
        packed.reset();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write((SVG + "<desc>" + new Random(1).ints(20_000).boxed().toList() + "</desc></svg>").getBytes(StandardCharsets.US_ASCII));
        }
        assertEquals("cut.svgz:1: this is no well-formed XML (Premature end of file); export the drawing again as SVG",
                refused(file("cut.svgz", Arrays.copyOf(packed.toByteArray(), 5000))));
    }

    private static byte[] picture(String format) throws IOException {
        BufferedImage image = new BufferedImage(200, 150, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 30_000; i++) {
            image.setRGB(i % 200, i / 200, i * 7919);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, format, out));
        return out.toByteArray();
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg", "tiff"})
    void picturesCutOff(String format) throws IOException {
        byte[] whole = picture(format);
        for (double share : new double[] {0.02, 0.4, 0.9}) {
            Path cut = file("cut." + format, Arrays.copyOf(whole, (int) (share * whole.length)));
            String message = assertThrows(Refusal.class, () -> Art.read(cut).gray(50)).getMessage();
            assertTrue(message.startsWith("cut." + format + ": the ") && message.contains("ends too early") || message.contains("damaged"), message);
        }
        assertEquals(200 * 25.4 / 96, Art.read(file("whole." + format, whole)).widthMm(), 25);
    }

    private static byte[] pngClaiming(int width, int height) throws IOException {
        byte[] png = picture("png");
        ByteBuffer head = ByteBuffer.wrap(png);
        head.putInt(16, width);
        head.putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        head.putInt(29, (int) sum.getValue());
        return png;
    }

    @Test
    void picturesThatClaimTooMuch() throws IOException {
        byte[] bomb = pngClaiming(100_000, 100_000);
        assertEquals("bomb.png: the picture claims 100000 x 100000 px, more than any sheet needs; save it at the size and resolution at which it is"
                + " printed, 1200 px an inch at most", refused(file("bomb.png", bomb)));
        String inside = refused(file("inside.svg", SVG + "\n<image id='i' width='5' height='5' href='data:image/png;base64,"
                + Base64.getEncoder().encodeToString(bomb) + "'/></svg>"));
        assertTrue(inside.startsWith("inside.svg:2: <image id=\"i\">: the picture claims"), inside);
        String large = refused(file("large.svg", SVG + "<image width='5' height='5' href='data:image/png;base64,"
                + Base64.getEncoder().encodeToString(pngClaiming(30_000, 30_000)) + "'/></svg>"));
        assertTrue(large.contains("too many to be placed in a drawing"), large);
        assertTrue(refused(file("flat.png", pngClaiming(0, 100))).contains("has no size"));
    }

    @Test
    void nothingOutsideTheFolderIsOpened() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        file("outside.png", picture("png"));
        Path drawing = Files.writeString(inner.resolve("a.svg"), SVG + "<image width='5' height='5' href='../outside.png'/>"
                + "<image width='5' height='5' href='https://example.org/a.png'/></svg>");
        Art art = Art.read(drawing);
        assertTrue(art.warns("art-outside", "lies outside the artwork's folder"));
        assertTrue(art.warns("art-outside", "never fetched"));
    }
}
