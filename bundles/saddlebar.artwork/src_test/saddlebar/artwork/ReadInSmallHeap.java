package saddlebar.artwork;

import java.io.IOException;
import java.nio.file.Path;

import saddlebar.model.problem.Refusal;

/** Reads files in a process of its own and says of each in a line what came of it; for tests that give that process little memory. */
final class ReadInSmallHeap {
    private ReadInSmallHeap() {
    }

    public static void main(String[] files) throws IOException {
        for (String file : files) {
            Path path = Path.of(file);
            String said;
            try {
                Art art = Art.read(path);
                said = "read, mean " + Math.round(Art.mean(art.gray(Math.min(72, 400 * 25.4 / Math.max(art.widthMm(), art.heightMm())))));
            } catch (Refusal e) {
                said = "refused: " + e.getMessage().replace('\n', ' ');
            } catch (Throwable e) { // what must not be: the test tells it
                said = "FAULT " + e;
            }
            System.out.println(path.getFileName() + " | " + said);
        }
    }
}
