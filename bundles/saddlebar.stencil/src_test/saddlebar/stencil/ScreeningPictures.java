package saddlebar.stencil;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import javax.imageio.ImageIO;

import saddlebar.stencil.tone.ToneTable;

/** Draws close-ups of every method and dot at 5, 25, 50, 75 and 95 % and over a ramp, paint black, to be looked at. Argument: a folder. */
public final class ScreeningPictures {
    private static final double[] TONES = {0.05, 0.25, 0.5, 0.75, 0.95};
    private static final int PATCH = 180;
    private static final int GAP = 6;

    private ScreeningPictures() {
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        overview(folder);
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults();
        for (String dot : new String[] {"round", "ellipse", "line", "diamond", "cosine", "Square", "Cross", "EllipseB", "DoubleDot", "Rhomboid"}) {
            draw(folder, "am-" + dot, recipe.withDot(dot));
        }
        draw(folder, "am-round-0", recipe.withAngleDeg(0));
        draw(folder, "am-round-45-1cell", recipe.withAngleDeg(45).withSupercell(1));
        for (String filter : DiffusionFilter.names()) {
            draw(folder, "diffusion-12px-" + filter, recipe.withMethod("diffusion").withFilter(filter));
            draw(folder, "diffusion-2px-" + filter, recipe.withMethod("diffusion").withFilter(filter).withDotMm(0.0424));
        }
        draw(folder, "bluenoise-2px", recipe.withMethod("bluenoise").withDotMm(0.0424));
        for (double clump : new double[] {0.5, 1, 1.5, 2}) {
            draw(folder, "greennoise-2px-" + clump, recipe.withMethod("greennoise").withDotMm(0.0424).withClump(clump));
        }
        draw(folder, "bluenoise-128-2px", recipe.withMethod("bluenoise").withNoiseSide(128).withDotMm(0.0424));
        draw(folder, "hybrid", recipe.withMethod("hybrid"));
        draw(folder, "hybrid-small", recipe.withMethod("hybrid").withDotMm(0.163).withAngleDeg(45));
        draw(folder, "stipple", recipe.withMethod("stipple"));
        draw(folder, "stipple-small", recipe.withMethod("stipple").withLpi(75).withDotMm(0.1));
        draw(folder, "lines", recipe.withMethod("lines"));
        draw(folder, "lines-rings", recipe.withMethod("lines").withCourse("rings"));
        draw(folder, "lines-waves", recipe.withMethod("lines").withCourse("waves:8,3"));
        draw(folder, "solid", recipe.withMethod("solid"));
    }

    /** The picture of the documentation: a method a row, the tones across, 150 px (3.2 mm at 1200 dpi) a patch. */
    private static void overview(Path folder) throws IOException {
        ScreeningRecipe base = ScreeningRecipe.withDefaults().withDotMm(0.17);
        ScreeningRecipe small = base.withDotMm(0.085);
        ScreeningRecipe[] recipes = {base, base.withMethod("hybrid"), base.withMethod("stipple"), base.withMethod("lines").withCourse("waves:6,2"),
                small.withMethod("diffusion"), small.withMethod("diffusion").withFilter("ostromoukhov"), small.withMethod("bluenoise").withNoiseSide(128),
                small.withMethod("greennoise")};
        int step = 150 + GAP;
        BufferedImage image = new BufferedImage(TONES.length * step - GAP, recipes.length * step - GAP, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
            image.getRaster().setSample(i % image.getWidth(), i / image.getWidth(), 0, 200);
        }
        for (int row = 0; row < recipes.length; row++) {
            ScreeningMethod method = ScreeningMethods.ownMethods().method(recipes[row].method());
            for (int i = 0; i < TONES.length; i++) {
                put(image, Fields.flat(method, recipes[row], TONES[i], 150, 150), i * step, row * step);
            }
        }
        ImageIO.write(image, "png", folder.resolve("methods.png").toFile());
    }

    private static void draw(Path folder, String name, ScreeningRecipe recipe) throws IOException {
        ScreeningMethod method = ScreeningMethods.ownMethods().method(recipe.method());
        int width = TONES.length * (PATCH + GAP) - GAP;
        BufferedImage image = new BufferedImage(width, 2 * PATCH + GAP, BufferedImage.TYPE_BYTE_GRAY);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                image.getRaster().setSample(x, y, 0, 200);
            }
        }
        for (int i = 0; i < TONES.length; i++) {
            put(image, Fields.flat(method, recipe, TONES[i], PATCH, PATCH), i * (PATCH + GAP), 0);
        }
        put(image, Fields.screened(method, recipe, ToneTable.linear(), width, PATCH, PATCH, (x, y) -> 255 - 256 * x / width), 0, PATCH + GAP);
        ImageIO.write(image, "png", folder.resolve(name.toLowerCase(Locale.ROOT) + ".png").toFile());
    }

    private static void put(BufferedImage image, BitPicture bits, int left, int top) {
        for (int y = 0; y < bits.heightPx(); y++) {
            for (int x = 0; x < bits.widthPx(); x++) {
                image.getRaster().setSample(left + x, top + y, 0, bits.get(x, y) ? 0 : 255);
            }
        }
    }
}
