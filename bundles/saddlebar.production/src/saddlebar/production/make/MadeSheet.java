package saddlebar.production.make;

import java.util.List;

/**
 * A sheet that lies under {@code made/}.
 *
 * @param laid    what lies where on it
 * @param key     content key
 * @param files   its files under {@code made/}: TIFF, PDF, proof
 * @param sha256s of the files, in their order
 * @param fresh   whether it was made now
 * @param seconds how long that took
 */
public record MadeSheet(LaidSheet laid, String key, List<String> files, List<String> sha256s, boolean fresh, double seconds) {
    public MadeSheet {
        files = List.copyOf(files);
        sha256s = List.copyOf(sha256s);
    }
}
