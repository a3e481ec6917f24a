package saddlebar.artwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

import javax.imageio.ImageIO;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are huge, broken or meant to harm, read in a process with a heap of 128 MB: each is refused in a sentence or read, none costs the process. */
class BadFilesInSmallHeapTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm'>";
    private static final long TWO_GB = 2L << 30;

    @TempDir
    Path folder;

    private final List<Path> files = new ArrayList<>();

    private void text(String name, String content) throws IOException {
        files.add(Files.writeString(folder.resolve(name), content, StandardCharsets.ISO_8859_1));
    }

    private void bytes(String name, byte[] content) throws IOException {
        files.add(Files.write(folder.resolve(name), content));
    }

    /** Takes no room on the disk: after its head there is nothing. */
    private void sparse(String name, byte[] head) throws IOException {
        Path file = Files.write(folder.resolve(name), head);
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            open.setLength(TWO_GB);
        }
        files.add(file);
    }

    private static byte[] picture(String format, int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    /** A gray PNG of so many pixels, all black, which packs to a thousandth. */
    private void blackPng(String name, int width, int height) throws IOException {
        try (OutputStream out = Files.newOutputStream(folder.resolve(name))) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
            chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8).put(new byte[4]).array());
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (DeflaterOutputStream deflate = new DeflaterOutputStream(packed, new Deflater(9))) {
                byte[] row = new byte[width + 1];
                for (int y = 0; y < height; y++) {
                    deflate.write(row);
                }
            }
            chunk(out, "IDAT", packed.toByteArray());
            chunk(out, "IEND", new byte[0]);
        }
        files.add(folder.resolve(name));
    }

    private static void chunk(OutputStream out, String type, byte[] data) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(type.getBytes(StandardCharsets.US_ASCII));
        sum.update(data);
        out.write(ByteBuffer.allocate(4).putInt(data.length).array());
        out.write(type.getBytes(StandardCharsets.US_ASCII));
        out.write(data);
        out.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    private void manyPages(int pages) throws IOException {
        StringBuilder pdf = new StringBuilder("%PDF-1.4\n");
        List<Integer> places = new ArrayList<>();
        places.add(pdf.length());
        pdf.append("1 0 obj << /Type /Catalog /Pages 2 0 R >> endobj\n");
        places.add(pdf.length());
        pdf.append("2 0 obj << /Type /Pages /Count ").append(pages).append(" /Kids [");
        for (int i = 0; i < pages; i++) {
            pdf.append(i + 4).append(" 0 R ");
        }
        pdf.append("] >> endobj\n");
        places.add(pdf.length());
        pdf.append("3 0 obj << /Length 15 >> stream\n10 10 30 30 re f\nendstream endobj\n");
        for (int i = 0; i < pages; i++) {
            places.add(pdf.length());
            pdf.append(i + 4).append(" 0 obj << /Type /Page /Parent 2 0 R /MediaBox [0 0 100 100] /Contents 3 0 R >> endobj\n");
        }
        int table = pdf.length();
        pdf.append("xref\n0 ").append(places.size() + 1).append("\n0000000000 65535 f \n");
        for (int place : places) {
            pdf.append(String.format(java.util.Locale.ROOT, "%010d 00000 n \n", place));
        }
        pdf.append("trailer << /Size ").append(places.size() + 1).append(" /Root 1 0 R >>\nstartxref\n").append(table).append("\n%%EOF\n");
        text("pages.pdf", pdf.toString());
        text("xref.pdf", pdf.substring(0, 60_000).replace(" /Count " + pages, " /Count 3") + "\nstartxref\n99999999\n%%EOF\n");
    }

    private void locked() throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(folder.resolve("locked.pdf").toFile());
        }
        files.add(folder.resolve("locked.pdf"));
    }

    private static byte[] jpegClaiming(int width, int height) throws IOException {
        byte[] jpeg = picture("jpg", 64, 64);
        for (int i = 2; i + 9 < jpeg.length; i++) {
            if (jpeg[i] == (byte) 0xFF && jpeg[i + 1] == (byte) 0xC0) {
                ByteBuffer.wrap(jpeg).putShort(i + 5, (short) height).putShort(i + 7, (short) width);
                return jpeg;
            }
        }
        throw new AssertionError("the picture has no frame");
    }

    private static String copies() {
        StringBuilder svg = new StringBuilder(SVG + "<defs><g id='u0'><rect width='1' height='1'/></g>");
        for (int i = 1; i < 40; i++) {
            svg.append("<g id='u").append(i).append("'>").append(("<use href='#u" + (i - 1) + "'/>").repeat(10)).append("</g>");
        }
        return svg + "</defs><use href='#u39'/></svg>";
    }

    private static String entities() {
        StringBuilder svg = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 '" + "<rect width=\"1\" height=\"1\"/>".repeat(500) + "'>]>" + SVG);
        for (int i = 0; i < 60_000; i++) {
            svg.append("<g>&a0;</g>");
        }
        return svg + "</svg>";
    }

    private void prepare() throws IOException {
        sparse("huge.svg", (SVG + "<!-- ").getBytes(StandardCharsets.US_ASCII));
        sparse("huge.pdf", "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII));
        sparse("huge.png", picture("png", 100, 100));
        sparse("huge.jpg", Arrays.copyOf(picture("jpg", 100, 100), 300));
        sparse("huge.tif", picture("tiff", 100, 100));
        sparse("huge.bin", new byte[] {1, 2, 3});
        manyPages(100_000);
        locked();
        blackPng("black.png", 12_000, 12_000);
        bytes("claims.jpg", jpegClaiming(60_000, 60_000));
        byte[] cut = picture("png", 300, 300);
        bytes("cut.png", Arrays.copyOf(cut, cut.length / 2));
        bytes("cut.tif", Arrays.copyOf(picture("tiff", 300, 300), 2000));
        text("copies.svg", copies());
        text("deep.svg", SVG + "<g>".repeat(500_000));
        text("entities.svg", entities());
        text("path.svg", SVG + "<path d='M0 0" + " L1 1 2 0".repeat(1_500_000) + "' stroke='black'/></svg>");
        text("elements.svg", SVG + "<g/>".repeat(300_000) + "</svg>");
        text("none.svg", "");
        text("letter.pdf", "This is a letter, not a drawing.");
        text("wrong.png", SVG + "<rect width='10' height='10'/></svg>");
    }

    @Test
    void noneCostsTheProcess() throws IOException, InterruptedException {
        prepare();
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx128m", "-XX:+UseSerialGC",
                "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"), ReadInSmallHeap.class.getName()));
        files.forEach(file -> command.add(file.toString()));
        Process child = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, child.waitFor(), said);
        Map<String, String> answers = new TreeMap<>();
        for (String line : said.split("\n")) {
            String[] parts = line.split(" \\| ", 2);
            if (parts.length == 2) { // else a library's word at its start
                answers.put(parts[0], parts[1]);
            }
        }
        assertEquals(files.size(), answers.size(), said);
        assertTrue(!said.contains("FAULT") && !said.contains("Exception") && !said.contains("Error"), said);
        answers.forEach((name, answer) -> assertTrue(answer.startsWith("refused: " + name) || answer.startsWith("read, mean "), () -> name + ": " + answer));
        for (String refused : List.of("huge.svg", "huge.pdf", "huge.bin", "huge.jpg", "locked.pdf", "claims.jpg", "cut.png", "cut.tif", "copies.svg",
                "deep.svg",
                "entities.svg", "path.svg", "elements.svg", "none.svg", "letter.pdf")) {
            assertTrue(answers.get(refused).startsWith("refused: "), () -> refused + ": " + answers.get(refused));
        }
        assertEquals("read, mean 0", answers.get("black.png"));
        assertTrue(answers.get("pages.pdf").startsWith("read"), answers.get("pages.pdf"));
        assertTrue(answers.get("locked.pdf").contains("password"), answers.get("locked.pdf"));
        assertTrue(answers.get("huge.pdf").contains("larger than 1024 MB"), answers.get("huge.pdf"));
        System.getLogger(BadFilesInSmallHeapTest.class.getName()).log(System.Logger.Level.DEBUG, said);
    }
}
