package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;

/**
 * What a stencil's or sheet's file (TIFF, PDF or PNG of this program) says of itself, and whether it is still true: the recipe, its hash, and the hash of the
 * bits as they were recorded, with the hash of the bits that are in it now.
 *
 * @param format         {@code tiff}, {@code pdf} or {@code png}
 * @param dpi            px an inch; 0 if the file does not say
 * @param title          may be empty
 * @param recipe         how it was made; may be empty
 * @param recordedRecipe SHA-256 of the recipe as recorded, if it is
 * @param recordedBits   SHA-256 of the bits ({@link BitsHash}) as recorded, if it is
 * @param bits           SHA-256 of the bits that are there
 */
public record StencilFile(String format, int widthPx, int heightPx, double dpi, String title, String recipe, Optional<String> recordedRecipe,
        Optional<String> recordedBits, String bits) {
    private static final int MOST_PX = 1 << 20;

    /** Whether the recipe is the one that was written. */
    public boolean recipeIntact() {
        return recordedRecipe.isPresent() && recordedRecipe.get().equals(Hashes.sha256(recipe));
    }

    /** Whether the bits are those that were written. */
    public boolean bitsIntact() {
        return recordedBits.isPresent() && recordedBits.get().equals(bits);
    }

    /**
     * Reads a file to its end.
     *
     * @throws Refusal if it is no bitonal TIFF or PNG, and no PDF of one sheet
     */
    public static StencilFile read(Path file, Work work) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(name, "there is no such file", "give a stencil or sheet");
        }
        return switch (kind(file)) {
            case "%PDF" -> ofPdf(file, name, work);
            case "\u0089PNG" -> ofPng(file, name, work);
            default -> ofTiff(file, work);
        };
    }

    /** Its first four bytes, whatever its name. */
    private static String kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(4), StandardCharsets.ISO_8859_1);
        }
    }

    private static StencilFile ofPng(Path file, String name, Work work) throws IOException {
        PngBits bits = new PngBits(file, name);
        String hash = BitsHash.of(bits, work);
        String packet = bits.text(BitonalPng.XMP);
        return new StencilFile("png", bits.widthPx(), bits.heightPx(), bits.dpi(), bits.text("Title"), bits.text("Description"),
                XmpPacket.hash(packet, "recipe"), XmpPacket.hash(packet, "bits"), hash);
    }

    private static StencilFile ofTiff(Path file, Work work) throws IOException {
        TiffBits bits = BitonalTiff.read(file);
        TiffInfo info = bits.info();
        String hash = BitsHash.of(bits, work);
        return new StencilFile("tiff", info.widthPx(), info.heightPx(), info.xDpi(), info.title(), info.description(), XmpPacket.hash(info.xmp(), "recipe"),
                XmpPacket.hash(info.xmp(), "bits"), hash);
    }

    private static StencilFile ofPdf(Path file, String name, Work work) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            StencilFile said = said(document, name);
            COSStream stream = image(document).getCOSObject();
            String hash = BitsHash.of(new StreamBits(stream.createRawInputStream(), said.widthPx, said.heightPx, packing(stream, name)), work);
            return new StencilFile(said.format, said.widthPx, said.heightPx, said.dpi, said.title, said.recipe, said.recordedRecipe, said.recordedBits, hash);
        } catch (IOException damaged) {
            throw new Refusal(name, "it cannot be read as PDF: " + damaged.getMessage(), "copy or make it again", damaged);
        }
    }

    /** All but the bits. The library meets damage with whatever it runs into. */
    private static StencilFile said(PDDocument document, String name) throws IOException {
        try {
            PDXObject image = document.getNumberOfPages() == 1 ? image(document) : null;
            if (image == null) {
                throw new Refusal(name, "it is no sheet that this program wrote", "give the PDF or TIFF of a sheet");
            }
            int width = image.getCOSObject().getInt(COSName.WIDTH);
            int height = image.getCOSObject().getInt(COSName.HEIGHT);
            if (width < 1 || height < 1 || width > MOST_PX || height > MOST_PX) {
                throw new Refusal(name, "it says an image of " + width + " x " + height + " px", "copy or make it again");
            }
            PDMetadata metadata = document.getDocumentCatalog().getMetadata();
            String packet = metadata == null ? "" : new String(metadata.toByteArray(), StandardCharsets.UTF_8);
            double dpi = width / ((document.getPage(0).getMediaBox().getWidth() + SheetPdf.SHORTER_PT) / Units.PT_PER_INCH);
            return new StencilFile("pdf", width, height, Math.round(dpi * 100) / 100.0, orEmpty(document.getDocumentInformation().getTitle()),
                    orEmpty(document.getDocumentInformation().getSubject()), XmpPacket.hash(packet, "recipe"), XmpPacket.hash(packet, "bits"), "");
        } catch (Refusal refusal) {
            throw refusal;
        } catch (RuntimeException damaged) {
            throw new Refusal(name, "it cannot be read as PDF (" + damaged.getClass().getSimpleName() + ")", "copy or make it again", damaged);
        }
    }

    /** Null if there is none. */
    private static PDXObject image(PDDocument document) throws IOException {
        PDResources resources = document.getPage(0).getResources();
        return resources == null ? null : resources.getXObject(COSName.getPDFName("Sheet"));
    }

    private static BitPacking packing(COSStream stream, String name) {
        COSBase filter = stream.getDictionaryObject(COSName.FILTER);
        if (filter == null) {
            return BitPacking.PLAIN;
        }
        if (filter.equals(COSName.CCITTFAX_DECODE)) {
            return BitPacking.T6;
        }
        if (filter.equals(COSName.FLATE_DECODE)) {
            return BitPacking.DEFLATE;
        }
        throw new Refusal(name, "its image is packed otherwise than this program does", "give the PDF or TIFF of a sheet");
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
