package saddlebar.artwork.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.InflaterInputStream;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

import saddlebar.model.problem.Refusal;

/** Counts what comes out of a packed stream without keeping it, so that a small file that unpacks to gigabytes is known before it does. */
final class Unpacked {
    private Unpacked() {
    }

    /**
     * Looks through the leading deflate filters of a stream; other filters hardly grow.
     *
     * @param what what is wrong if there is more than {@code most} bytes in it
     */
    static void require(COSStream stream, long most, String where, String what) throws IOException {
        List<COSBase> filters = new ArrayList<>();
        if (stream.getFilters() instanceof COSArray several) {
            several.forEach(filters::add);
        } else if (stream.getFilters() != null) {
            filters.add(stream.getFilters());
        }
        if (filters.isEmpty() || !isDeflate(filters.get(0))) {
            return;
        }
        try (InputStream in = inflated(stream.createRawInputStream(), filters)) {
            byte[] passing = new byte[1 << 16];
            long count = 0;
            for (int n = in.read(passing); n >= 0; n = in.read(passing)) {
                count += n;
                if (count > most) {
                    throw new Refusal(where, what, "export the page again");
                }
            }
        } catch (java.util.zip.ZipException | java.io.EOFException e) {
            return; // damaged: the library mends what it can, and tells the rest
        }
    }

    private static InputStream inflated(InputStream raw, List<COSBase> filters) {
        long times = filters.stream().takeWhile(Unpacked::isDeflate).count();
        return times > 1 ? new InflaterInputStream(new InflaterInputStream(raw)) : new InflaterInputStream(raw); // nobody packs thrice
    }

    private static boolean isDeflate(COSBase filter) {
        return COSName.FLATE_DECODE.equals(filter) || COSName.FLATE_DECODE_ABBREVIATION.equals(filter);
    }
}
