package saddlebar.production.make;

/**
 * A list for people that lies under {@code made/}.
 *
 * @param what    pieces, cutting list or making record
 * @param file    its path under {@code made/}
 * @param key     content key
 * @param sha256  of its bytes
 * @param fresh   whether it was made now
 * @param seconds how long that took
 */
public record MadeList(String what, String file, String key, String sha256, boolean fresh, double seconds) {
}
