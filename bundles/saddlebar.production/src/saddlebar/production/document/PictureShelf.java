package saddlebar.production.document;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

import saddlebar.model.store.CommissionFolder;
import saddlebar.report.document.Picture;
import saddlebar.report.document.ReportMatter;

/** Pictures that lie in folders: the studio's mark, photographs. Made small enough for a document; one that cannot be read is told and left out. */
final class PictureShelf {
    private static final int MOST_PX = 1400;
    private static final long LARGEST_PX = 200_000_000L;
    private static final int MOST_PHOTOS = 60;
    private static final float QUALITY = 0.86f;

    private PictureShelf() {
    }

    static Optional<Picture> mark(CommissionFolder folder, List<String> untold) throws IOException {
        String file = folder.studio().getMarkFile();
        if (file == null || file.isBlank()) {
            return Optional.empty();
        }
        Path path = folder.studioFolder().resolve(file);
        try {
            return Optional.of(png(read(path), folder.studio().getName() == null ? "mark" : folder.studio().getName()));
        } catch (IOException e) {
            untold.add("The studio's mark " + file + " cannot be read (" + e.getMessage() + "); documents go without it.");
            return Optional.empty();
        }
    }

    static List<ReportMatter.Photo> photos(CommissionFolder folder, List<String> untold) throws IOException {
        Path photos = folder.path().resolve("photos");
        List<ReportMatter.Photo> found = new ArrayList<>();
        if (!Files.isDirectory(photos)) {
            return found;
        }
        List<Path> files;
        try (Stream<Path> all = Files.walk(photos)) {
            files = all.filter(Files::isRegularFile).filter(file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(png|jpe?g)")).sorted().toList();
        }
        for (Path file : files.subList(0, Math.min(MOST_PHOTOS, files.size()))) {
            String name = file.getFileName().toString();
            try {
                found.add(new ReportMatter.Photo(name, jpeg(read(file), name)));
            } catch (IOException e) {
                untold.add("The photograph " + name + " cannot be read (" + e.getMessage() + "); it is left out.");
            }
        }
        if (files.size() > MOST_PHOTOS) {
            untold.add("There are " + files.size() + " photographs; the first " + MOST_PHOTOS + " by name are shown.");
        }
        return found;
    }

    /** Reads only as many px as are needed. */
    private static BufferedImage read(Path file) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            if (in == null || !ImageIO.getImageReaders(in).hasNext()) {
                throw new IOException("it is no picture");
            }
            ImageReader reader = ImageIO.getImageReaders(in).next();
            try {
                reader.setInput(in);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if ((long) width * height > LARGEST_PX) {
                    throw new IOException("it has " + width + " x " + height + " px");
                }
                var parameters = reader.getDefaultReadParam();
                int step = Math.max(1, Math.max(width, height) / (2 * MOST_PX));
                parameters.setSourceSubsampling(step, step, 0, 0);
                return small(reader.read(0, parameters));
            } catch (IllegalArgumentException | IndexOutOfBoundsException e) { // how readers speak of torn files
                throw new IOException("it is damaged", e);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage small(BufferedImage image) {
        double scale = Math.min(1, MOST_PX / (double) Math.max(image.getWidth(), image.getHeight()));
        BufferedImage small = new BufferedImage(Math.max(1, (int) Math.round(image.getWidth() * scale)),
                Math.max(1, (int) Math.round(image.getHeight() * scale)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.setColor(java.awt.Color.WHITE);
        graphics.fillRect(0, 0, small.getWidth(), small.getHeight());
        graphics.drawImage(image, 0, 0, small.getWidth(), small.getHeight(), null);
        graphics.dispose();
        return small;
    }

    static Picture png(BufferedImage image, String words) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return new Picture(bytes.toByteArray(), "image/png", image.getWidth(), image.getHeight(), words);
    }

    private static Picture jpeg(BufferedImage image, String words) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam parameters = writer.getDefaultWriteParam();
            parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            parameters.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } finally {
            writer.dispose();
        }
        return new Picture(bytes.toByteArray(), "image/jpeg", image.getWidth(), image.getHeight(), words);
    }
}
