import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Draws the artwork of the demonstration commissions: {@code bash releng/demo-art/draw [FOLDER]}. The same bytes on every run.
 */
public final class DrawDemo {
    private DrawDemo() {
    }

    /** First argument: the folder of palette.csv; second: the folder to draw into; then, if any, the names of the files to draw. */
    public static void main(String[] args) throws IOException {
        Palette palette = Palette.read(Path.of(args[0]).resolve("palette.csv"));
        Path demo = Path.of(args[1]);
        List<String> wanted = List.of(args).subList(2, args.length);
        boolean sound = true;
        for (Drawing drawing : Drawing.values()) {
            if (wanted.isEmpty() || wanted.contains(drawing.name())) {
                sound &= draw(drawing, palette, demo);
            }
        }
        if (!sound) {
            System.exit(1);
        }
    }

    private static boolean draw(Drawing drawing, Palette palette, Path demo) throws IOException {
        Sheet sheet = drawing.sheet();
        List<Curve> lines = sheet.cartoon.lines();
        List<Arrangement.Face> faces = sheet.faces(lines);
        Path file = demo.resolve(drawing.file());
        Files.createDirectories(file.getParent());
        Files.write(file, sheet.svg(palette, lines, faces).getBytes(StandardCharsets.UTF_8));
        List<String> faults = sheet.faults(faces);
        System.out.printf(Locale.ROOT, "%s: %d pieces, %d bytes%n", file, faces.size(), Files.size(file));
        faults.forEach(f -> System.out.println("  " + f));
        return faults.isEmpty();
    }
}
