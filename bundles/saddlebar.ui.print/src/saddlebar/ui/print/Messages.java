package saddlebar.ui.print;

import org.eclipse.osgi.util.NLS;

/** The words of the print bench, by meaning. */
public final class Messages extends NLS {
    public static String Card_count;
    public static String Card_defect;
    public static String Card_fire;
    public static String Card_firing;
    public static String Card_flaw;
    public static String Card_humidity;
    public static String Card_layer;
    public static String Card_mix;
    public static String Card_none;
    public static String Card_peak;
    public static String Card_photo;
    public static String Card_photoChoose;
    public static String Card_piece;
    public static String Card_place;
    public static String Card_pull;
    public static String Card_pullNumber;
    public static String Card_readOnly;
    public static String Card_recorded;
    public static String Card_screen;
    public static String Card_severity;
    public static String Card_who;
    public static String Column_carries;
    public static String Column_frame;
    public static String Column_layer;
    public static String Column_mesh;
    public static String Column_prints;
    public static String Column_pulls;
    public static String Column_since;
    public static String Column_state;
    public static String Column_stencils;
    public static String Column_window;
    public static String Job_reading;
    public static String Mix_caution;
    public static String Mix_lot;
    public static String Mix_mediumG;
    public static String Mix_name;
    public static String Mix_paint;
    public static String Mix_powderG;
    public static String Mix_record;
    public static String Mix_suggest;
    public static String Rack_count;
    public static String Rack_graph;
    public static String Rack_none;
    public static String Rack_of;
    public static String Rack_reclaim;
    public static String State_empty;
    public static String State_loaded;
    public static String State_notOfStudio;
    public static String State_outOfUse;
    public static String State_toReclaim;
    public static String Today_next;
    public static String Today_none;

    static {
        NLS.initializeMessages("saddlebar.ui.print.messages", Messages.class);
    }

    private Messages() {
    }
}
