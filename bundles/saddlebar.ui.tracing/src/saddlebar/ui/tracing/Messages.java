package saddlebar.ui.tracing;

import org.eclipse.osgi.util.NLS;

/** The words of the tracing bench, by meaning. */
public final class Messages extends NLS {
    public static String Column_commission;
    public static String Column_defect;
    public static String Column_exposed;
    public static String Column_factor;
    public static String Column_follows;
    public static String Column_now;
    public static String Column_other;
    public static String Column_place;
    public static String Column_q;
    public static String Column_setting;
    public static String Column_severity;
    public static String Column_state;
    public static String Column_subject;
    public static String Column_then;
    public static String Column_what;
    public static String Column_when;
    public static String Column_who;
    public static String Column_with;
    public static String Exposed_count;
    public static String Exposed_flawed;
    public static String Exposed_none;
    public static String Flaws_count;
    public static String Flaws_noPhoto;
    public static String Flaws_noPlace;
    public static String Flaws_none;
    public static String Flaws_photoGone;
    public static String Follows_also;
    public static String Follows_clear;
    public static String Follows_explained;
    public static String Follows_inseparable;
    public static String Follows_leading;
    public static String Follows_tooFew;
    public static String Job_reading;
    public static String Job_tracing;
    public static String Kind_bring;
    public static String Kind_defect;
    public static String Kind_fire;
    public static String Kind_fix;
    public static String Kind_fuse;
    public static String Kind_glaze;
    public static String Kind_mix;
    public static String Kind_pieces;
    public static String Kind_pull;
    public static String Kind_reclaim;
    public static String Kind_remake;
    public static String Kind_sheet;
    public static String Kind_stencil;
    public static String State_fired;
    public static String State_fixed;
    public static String State_glazed;
    public static String State_printed;
    public static String State_remade;
    public static String State_toRemake;
    public static String Suspects_count;
    public static String Suspects_none;
    public static String Suspects_share;
    public static String ThenNow_all;
    public static String ThenNow_count;
    public static String ThenNow_none;
    public static String WayBack_count;
    public static String WayBack_graph;
    public static String WayBack_none;

    static {
        NLS.initializeMessages("saddlebar.ui.tracing.messages", Messages.class);
    }

    private Messages() {
    }
}
