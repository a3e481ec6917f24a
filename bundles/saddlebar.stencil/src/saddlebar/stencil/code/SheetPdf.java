package saddlebar.stencil.code;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/**
 * A sheet as PDF of one page at exact size (px / dpi * 72 pt), holding one image whose bytes are those of a TIFF with one strip: T.6, or deflated
 * or plain bits where that is smaller. Viewers are asked not to scale when printing. No date; the document's identifiers come from the bits and the words.
 * One image a page and not one a strip, since a viewer may leave a hair between two images, which would print.
 * <p>Source: ISO 32000-1:2008, 7.4.4 (FlateDecode), 7.4.6 with Table 11 (CCITTFaxDecode), 8.9.5 (images), 12.2 (PrintScaling), 14.3.2 (metadata), 14.4 (identifiers).
 */
public final class SheetPdf {
    /** Largest side of a page, ISO 32000-1, Annex C. */
    private static final double MOST_PT = 14_400;

    /**
     * The image keeps so far off the page's edges: a viewer that counts an edge on the very border of a px to the next px would stretch the whole
     * image by one px, which a screen of dots shows as a band.
     */
    private static final double INSET_PX = 0.01;

    /**
     * By so much, a seventh of a micrometre, the page is smaller than its px: sizes such as 1.38 pt come out a hair above 23 px in binary, and a viewer that
     * rounds up would draw a row or a column more.
     */
    static final double SHORTER_PT = 0.0004;

    private SheetPdf() {
    }

    /**
     * Writes bits and closes them.
     *
     * @param settings rows per strip are not looked at: the image is one
     * @param work     told one unit a row
     */
    public static WrittenBits write(BitBands bits, Path target, BitonalSettings settings, Work work) throws IOException {
        try (bits;
                OutputFile file = OutputFile.open(target, settings.replace());
                CodedBits coded = CodedBits.of(bits, target, settings.withRowsPerStrip(0), work)) {
            return write(coded, file, target, settings, work);
        }
    }

    /** Writes rows that are coded already in one strip; they stay open. */
    public static WrittenBits write(CodedBits coded, Path target, BitonalSettings settings, Work work) throws IOException {
        if (coded.strips().size() != 1) {
            throw new IllegalArgumentException("a PDF image is one strip, not " + coded.strips().size());
        }
        try (OutputFile file = OutputFile.open(target, settings.replace())) {
            return write(coded, file, target, settings, work);
        }
    }

    private static WrittenBits write(CodedBits coded, OutputFile file, Path target, BitonalSettings settings, Work work) throws IOException {
        double widthPt = coded.widthPx() / settings.dpi() * Units.PT_PER_INCH;
        double heightPt = coded.heightPx() / settings.dpi() * Units.PT_PER_INCH;
        if (widthPt > MOST_PT || heightPt > MOST_PT) {
            throw new Refusal(target.toString(), "a PDF page cannot be longer than 200 inches", "make the sheet smaller or its resolution higher");
        }
        try {
            save(coded, file, widthPt, heightPt, settings);
        } catch (LockedException e) {
            throw e;
        } catch (IOException e) {
            // all that is read here are our own files: the temporary folder, in which the library keeps the rows, is full or cannot be written
            throw new LockedException(target + " cannot be written (" + e.getMessage() + "); nothing was changed; free space in the temporary folder", e);
        }
        work.checkpoint();
        try (PDDocument document = Loader.loadPDF(file.written().toFile(), IOUtils.createTempFileOnlyStreamCache())) {
            return check(document, coded, file, target, settings, work);
        }
    }

    private static void save(CodedBits coded, OutputFile file, double widthPt, double heightPt, BitonalSettings settings) throws IOException {
        try (PDDocument document = new PDDocument(IOUtils.createTempFileOnlyStreamCache())) {
            PDPage page = new PDPage(new PDRectangle((float) (widthPt - SHORTER_PT), (float) (heightPt - SHORTER_PT)));
            document.addPage(page);
            PDResources resources = new PDResources();
            page.setResources(resources);
            resources.put(COSName.getPDFName("Sheet"), image(document, coded));
            page.setContents(content(document, widthPt, heightPt, INSET_PX / settings.dpi() * Units.PT_PER_INCH));
            PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            describe(document, coded, settings);
            document.save(file, CompressParameters.NO_COMPRESSION);
        }
    }

    private static PDImageXObject image(PDDocument document, CodedBits coded) throws IOException {
        try (InputStream bytes = coded.open()) {
            COSName filter = filter(coded.packing());
            PDImageXObject image = new PDImageXObject(document, bytes, filter, coded.widthPx(), coded.heightPx(), 1, PDDeviceGray.INSTANCE);
            COSDictionary dictionary = image.getCOSObject();
            if (coded.packing() != BitPacking.T6) {
                COSArray oneIsBlack = new COSArray();
                oneIsBlack.add(COSInteger.ONE);
                oneIsBlack.add(COSInteger.ZERO);
                dictionary.setItem(COSName.DECODE, oneIsBlack);
            } else {
                COSDictionary parameters = new COSDictionary();
                parameters.setInt(COSName.K, -1);
                parameters.setInt(COSName.COLUMNS, coded.widthPx());
                parameters.setInt(COSName.ROWS, coded.heightPx());
                parameters.setBoolean(COSName.BLACK_IS_1, false);
                parameters.setBoolean(COSName.getPDFName("EndOfBlock"), true);
                parameters.setBoolean(COSName.getPDFName("EndOfLine"), false);
                parameters.setBoolean(COSName.getPDFName("EncodedByteAlign"), false);
                parameters.setInt(COSName.getPDFName("DamagedRowsBeforeError"), 0);
                dictionary.setItem(COSName.DECODE_PARMS, parameters);
            }
            return image;
        }
    }

    private static COSName filter(BitPacking packing) {
        return switch (packing) {
            case T6 -> COSName.CCITTFAX_DECODE;
            case PLAIN -> null;
            case DEFLATE -> COSName.FLATE_DECODE;
        };
    }

    private static PDStream content(PDDocument document, double widthPt, double heightPt, double insetPt) throws IOException {
        String drawing = String.format(Locale.ROOT, "q %.6f 0 0 %.6f %.6f %.6f cm /Sheet Do Q\n", widthPt - 2 * insetPt, heightPt - 2 * insetPt,
                insetPt, insetPt);
        PDStream content = new PDStream(document);
        try (OutputStream out = content.createOutputStream()) {
            out.write(drawing.getBytes(StandardCharsets.US_ASCII));
        }
        return content;
    }

    private static void describe(PDDocument document, CodedBits coded, BitonalSettings settings) throws IOException {
        document.getDocumentInformation().setTitle(settings.title());
        document.getDocumentInformation().setSubject(settings.description());
        document.getDocumentInformation().setCreator(settings.software());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(XmpPacket.of(settings.title(), settings.description(), coded.sha256OfBits()));
        document.getDocumentCatalog().setMetadata(metadata);
        String from = coded.sha256OfBits() + '\n' + settings.dpi() + '\n' + settings.title() + '\n' + settings.description() + '\n' + settings.software();
        document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(from).substring(0, 16), 16)); // else the writer takes the time of day
    }

    /** Opens what was written: page of the right size, image with the right bits. */
    private static WrittenBits check(PDDocument document, CodedBits coded, OutputFile file, Path target, BitonalSettings settings, Work work)
            throws IOException {
        PDRectangle box = document.getPage(0).getMediaBox();
        double widthPx = box.getWidth() / Units.PT_PER_INCH * settings.dpi();
        double heightPx = box.getHeight() / Units.PT_PER_INCH * settings.dpi();
        if (Math.abs(widthPx - coded.widthPx()) > 0.5 || Math.abs(heightPx - coded.heightPx()) > 0.5) {
            throw new LockedException(target + " reads back a page of another size than was written; nothing was changed; check the disk");
        }
        COSStream stream = (COSStream) document.getPage(0).getResources().getXObject(COSName.getPDFName("Sheet")).getCOSObject();
        try (BitBands readBack = new StreamBits(stream.createRawInputStream(), coded.widthPx(), coded.heightPx(), coded.packing())) {
            return file.commitIfSame(coded.sha256OfBits(), readBack, coded.compression(), coded.choice(), work);
        }
    }
}
