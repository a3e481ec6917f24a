package saddlebar.model.store;

/**
 * What can be told of a record file without reading it: enough to see that it was only appended to.
 *
 * @param wholeBytes bytes up to its last line feed
 * @param modifiedMs when the system last saw it change, ms since 1970
 * @param lastSha256 hash of its last whole line; empty if it has none
 */
public record RecordFileState(long wholeBytes, long modifiedMs, String lastSha256) {
}
