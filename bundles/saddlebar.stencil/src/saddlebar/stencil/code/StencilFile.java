package saddlebar.stencil.code;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;

/**
 * What a stencil's or sheet's file (TIFF or PDF of this program) says of itself, and whether it is still true: the recipe, its hash, and the hash of the
 * bits as they were recorded, with the hash of the bits that are in it now.
 *
 * @param format         {@code tiff} or {@code pdf}
 * @param dpi            px an inch; 0 if the file does not say
 * @param title          may be empty
 * @param recipe         how it was made; may be empty
 * @param recordedRecipe SHA-256 of the recipe as recorded, if it is
 * @param recordedBits   SHA-256 of the bits ({@link BitsHash}) as recorded, if it is
 * @param bits           SHA-256 of the bits that are there
 */
public record StencilFile(String format, int widthPx, int heightPx, double dpi, String title, String recipe, Optional<String> recordedRecipe,
        Optional<String> recordedBits, String bits) {
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
     * @throws Refusal if it is no bitonal TIFF, and no PDF of one sheet
     */
    public static StencilFile read(Path file, Work work) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new Refusal(name, "there is no such file", "give a stencil or sheet");
        }
        return name.toLowerCase(Locale.ROOT).endsWith(".pdf") ? ofPdf(file, name, work) : ofTiff(file, work);
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
            PDXObject image = document.getNumberOfPages() == 1 ? document.getPage(0).getResources().getXObject(COSName.getPDFName("Sheet")) : null;
            if (image == null) {
                throw new Refusal(name, "it is no sheet that this program wrote", "give the PDF or TIFF of a sheet");
            }
            COSStream stream = image.getCOSObject();
            int width = stream.getInt(COSName.WIDTH);
            int height = stream.getInt(COSName.HEIGHT);
            boolean plain = stream.getDictionaryObject(COSName.FILTER) == null;
            String hash = BitsHash.of(new StreamBits(stream.createRawInputStream(), width, height, plain), work);
            PDMetadata metadata = document.getDocumentCatalog().getMetadata();
            String packet = metadata == null ? "" : new String(metadata.toByteArray(), StandardCharsets.UTF_8);
            double dpi = width / (document.getPage(0).getMediaBox().getWidth() / Units.PT_PER_INCH);
            return new StencilFile("pdf", width, height, Math.round(dpi * 100) / 100.0, orEmpty(document.getDocumentInformation().getTitle()),
                    orEmpty(document.getDocumentInformation().getSubject()), XmpPacket.hash(packet, "recipe"), XmpPacket.hash(packet, "bits"), hash);
        } catch (IOException damaged) {
            throw new Refusal(name, "it cannot be read as PDF: " + damaged.getMessage(), "copy or make it again", damaged);
        }
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
