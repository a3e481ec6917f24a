package saddlebar.artwork.raster;

import java.io.EOFException;
import java.io.IOException;

import javax.imageio.stream.ImageInputStream;

import saddlebar.model.problem.Refusal;

/** Judges a TIFF by its first directory: are all the pixels it speaks of in the file? */
final class TiffHead {
    private static final double CM_PER_INCH = 2.54;
    private static final int SEPARATED = 5;

    private final ImageInputStream in;
    private final String where;

    TiffHead(ImageInputStream in, String where) {
        this.in = in;
        this.where = where;
    }

    PictureHead read() throws IOException {
        TiffTags tags = TiffTags.read(in, where);
        PictureHead.Draft draft = new PictureHead.Draft();
        draft.width = size(tags.number(TiffTags.WIDTH, 0));
        draft.height = size(tags.number(TiffTags.HEIGHT, 0));
        draft.channels = (int) tags.number(TiffTags.SAMPLES, 1);
        draft.bits = (int) tags.number(TiffTags.BITS, 1);
        draft.orientation = (int) tags.number(TiffTags.ORIENTATION, 1);
        draft.inks = tags.number(TiffTags.PHOTOMETRIC, 0) == SEPARATED;
        long unit = tags.number(TiffTags.RESOLUTION_UNIT, 2);
        double perInch = unit == 2 ? 1 : unit == 3 ? CM_PER_INCH : 0;
        draft.dpiX = tags.real(TiffTags.X_RESOLUTION, 0) * perInch;
        draft.dpiY = tags.real(TiffTags.Y_RESOLUTION, 0) * perInch;
        if (tags.number(TiffTags.SAMPLE_FORMAT, 1) > 2 || draft.bits > 16) {
            throw new Refusal(where, "the TIFF holds more than 16 bits a sample, or floating point", "save it with 8 or 16 bits");
        }
        if (tags.more()) {
            draft.notes.add("it has several pages; the first is taken");
        }
        inFile(tags, TiffTags.STRIP_OFFSETS, TiffTags.STRIP_BYTES);
        inFile(tags, TiffTags.TILE_OFFSETS, TiffTags.TILE_BYTES);
        if (tags.all(TiffTags.STRIP_OFFSETS).length == 0 && tags.all(TiffTags.TILE_OFFSETS).length == 0) {
            throw PictureHead.damaged(PictureHead.Kind.TIFF, where, "it holds no pixels", null);
        }
        return draft.as(PictureHead.Kind.TIFF);
    }

    private static int size(long px) {
        return (int) Math.min(px, Integer.MAX_VALUE);
    }

    private void inFile(TiffTags tags, int offsets, int bytes) throws IOException {
        double[] from = tags.all(offsets);
        double[] length = tags.all(bytes);
        for (int i = 0; i < from.length; i++) {
            double end = from[i] + (i < length.length ? length[i] : 1);
            if (in.length() >= 0 && end > in.length()) {
                throw new EOFException();
            }
        }
    }
}
