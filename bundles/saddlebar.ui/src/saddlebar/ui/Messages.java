package saddlebar.ui;

import org.eclipse.osgi.util.NLS;

/** The words of the desktop; keys by meaning. */
public final class Messages extends NLS {
    public static String Easel_accessibleEmpty;
    public static String Easel_accessibleName;
    public static String Easel_accessiblePiece;
    public static String Glass_unchosen;

    static {
        NLS.initializeMessages("saddlebar.ui.messages", Messages.class);
    }

    private Messages() {
    }
}
