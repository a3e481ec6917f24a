package saddlebar.production.make;

import saddlebar.model.file.Hashes;

/** What a made thing depends on, as one hash: equal key, equal bytes. */
final class ContentKey {
    /** Raised whenever the same input would give other bytes, so that nothing old is kept. */
    private static final String MAKING = "1";

    private ContentKey() {
    }

    static String of(Object... parts) {
        StringBuilder text = new StringBuilder(MAKING);
        for (Object part : parts) {
            text.append('\n').append(part);
        }
        return Hashes.sha256(text.toString());
    }
}
