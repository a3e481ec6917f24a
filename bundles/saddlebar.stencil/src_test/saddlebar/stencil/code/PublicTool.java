package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import saddlebar.stencil.BitPicture;

/** General programs that read and write the same formats, run as second opinion where they are installed; a test is left out where they are not. */
public final class PublicTool {
    private PublicTool() {
    }

    /** Runs a program to its end and gives what it printed; fails if it reports a failure. */
    public static String run(Object... command) throws IOException, InterruptedException {
        List<String> words = Arrays.stream(command).map(String::valueOf).toList();
        String name = words.get(0);
        assumeTrue(Stream.of(System.getenv("PATH").split(File.pathSeparator)).anyMatch(folder -> Files.isExecutable(Path.of(folder, name))),
                name + " is not installed");
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String printed;
        try (InputStream out = process.getInputStream()) {
            printed = new String(out.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertEquals(0, process.waitFor(), name + ": " + printed);
        return printed;
    }

    /** Reads a raw PBM file (1 = black). */
    static BitPicture pbm(Path file) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            assertEquals("P4", word(in));
            BitPicture picture = new BitPicture(Integer.parseInt(word(in)), Integer.parseInt(word(in)));
            for (int y = 0; y < picture.heightPx(); y++) {
                for (int x = 0; x < picture.widthPx(); x += 8) {
                    int px = in.readUnsignedByte();
                    for (int i = 0; i < 8 && x + i < picture.widthPx(); i++) {
                        picture.set(x + i, y, (px >> 7 - i & 1) != 0);
                    }
                }
            }
            return picture;
        }
    }

    private static String word(DataInputStream in) throws IOException {
        StringBuilder word = new StringBuilder();
        for (int c = in.read(); c > ' ' || c == '#'; c = in.read()) {
            if (c == '#') {
                while (in.read() != '\n') {
                    continue;
                }
            } else {
                word.append((char) c);
            }
        }
        return word.length() == 0 ? word(in) : word.toString();
    }

    static void writePbm(BitPicture picture, Path file) throws IOException {
        byte[] rows = new byte[PackedRows.bytesPerRow(picture.widthPx()) * picture.heightPx()];
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                if (picture.get(x, y)) {
                    rows[y * ((picture.widthPx() + 7) / 8) + x / 8] |= (byte) (0x80 >> x % 8);
                }
            }
        }
        byte[] head = ("P4\n" + picture.widthPx() + " " + picture.heightPx() + "\n").getBytes(StandardCharsets.US_ASCII);
        byte[] all = Arrays.copyOf(head, head.length + rows.length);
        System.arraycopy(rows, 0, all, head.length, rows.length);
        Files.write(file, all);
    }
}
