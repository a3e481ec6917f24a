package saddlebar.production.make;

import java.util.Map;

/**
 * A file that was made.
 *
 * @param key      content key: hash of all it was made from
 * @param sha256   of its bytes
 * @param bytes    its size
 * @param modified when it was last written, ms since 1970: a quick sign that it was not touched
 * @param facts    what was found while making it, such as its coverage
 */
public record MadeFileFacts(String key, String sha256, long bytes, long modified, Map<String, String> facts) {
    public MadeFileFacts {
        facts = Map.copyOf(facts);
    }
}
