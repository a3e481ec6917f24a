package saddlebar.trace.prov;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Names of PROV: a prefix and a local part in which everything but letters, digits, hyphen, underscore, full stop and slash is percent-encoded. */
final class ProvNames {
    static final String THING = "thing";
    static final String RECORD = "record";
    static final String PERSON = "person";
    static final String SETTING = "set";
    static final String OWN = "sb";

    private ProvNames() {
    }

    static String of(String prefix, String local) {
        return prefix + ":" + URLEncoder.encode(local, StandardCharsets.UTF_8).replace("+", "%20").replace("*", "%2A").replace("%2F", "/");
    }

    /** A thing of the lineage by kind and name: {@code mix=M07} becomes {@code thing:mix/M07}. */
    static String ofThing(String thing) {
        int end = thing.indexOf('=');
        return of(THING, thing.substring(0, end) + "/" + thing.substring(end + 1));
    }

    /** The local part as it was. */
    static String local(String name) {
        return URLDecoder.decode(name.substring(name.indexOf(':') + 1).replace("+", "%2B"), StandardCharsets.UTF_8);
    }
}
