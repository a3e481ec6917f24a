package saddlebar.production.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * A photo that was looked at and is a picture.
 *
 * @param file      where it lies
 * @param extension of its format
 * @param sha256    of its content
 * @param widthPx   of the picture
 * @param heightPx  of the picture
 */
record PhotoFile(Path file, String extension, String sha256, int widthPx, int heightPx) {
    private static final Map<String, String> EXTENSIONS = Map.of("jpeg", "jpg", "png", "png", "tif", "tif", "tiff", "tif");

    /**
     * Decodes a part of it, so that a file that only begins like a picture is seen.
     *
     * @throws Refusal if it is none
     */
    static PhotoFile look(String where, Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new Refusal(where, "there is no photo " + file, "name the file of the photo");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            while (readers.hasNext()) {
                ImageReader reader = readers.next();
                try {
                    String extension = EXTENSIONS.get(reader.getFormatName().toLowerCase(Locale.ROOT));
                    if (extension != null) {
                        reader.setInput(in);
                        var thin = reader.getDefaultReadParam();
                        int width = reader.getWidth(0);
                        int height = reader.getHeight(0);
                        int step = Math.max(1, Math.max(width, height) / 64);
                        thin.setSourceSubsampling(step, step, 0, 0);
                        reader.read(0, thin);
                        return new PhotoFile(file, extension, Hashes.sha256(file), width, height);
                    }
                } finally {
                    reader.dispose();
                }
            }
        } catch (IOException | RuntimeException e) {
            throw new Refusal(where, file + " is no picture (" + e.getMessage() + ")", "give a JPEG, PNG or TIFF that a viewer opens", e);
        }
        throw new Refusal(where, file + " is no picture", "give a JPEG, PNG or TIFF that a viewer opens");
    }
}
