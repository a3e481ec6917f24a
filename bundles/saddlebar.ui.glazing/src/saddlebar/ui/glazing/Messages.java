package saddlebar.ui.glazing;

import org.eclipse.osgi.util.NLS;

/** The words of the Glazing bench and of Money, by meaning; {@code messages.properties} and one file for each other language. */
final class Messages extends NLS {
    public static String Bars_caution;
    public static String Bars_heights;
    public static String Bars_length;
    public static String Bars_noBar;
    public static String Bars_reason;
    public static String Bars_ties;
    public static String Cost_openFirst;
    public static String Cost_reckoning;
    public static String Edit_addPrice;
    public static String Edit_price;
    public static String Edit_removePrice;
    public static String Metal_alike;
    public static String Metal_bar;
    public static String Metal_bound;
    public static String Metal_came;
    public static String Metal_cement;
    public static String Metal_foil;
    public static String Metal_glass;
    public static String Metal_handling;
    public static String Metal_index;
    public static String Metal_kind;
    public static String Metal_lead;
    public static String Metal_lengths;
    public static String Metal_metal;
    public static String Metal_need;
    public static String Metal_none;
    public static String Metal_packs;
    public static String Metal_panel;
    public static String Metal_proven;
    public static String Metal_rest;
    public static String Metal_solder;
    public static String Metal_stock;
    public static String Metal_sum;
    public static String Metal_times;
    public static String Metal_total;
    public static String Metal_what;
    public static String Money_actual;
    public static String Money_amount;
    public static String Money_assumed;
    public static String Money_buy;
    public static String Money_byPrice;
    public static String Money_byQuantity;
    public static String Money_came;
    public static String Money_cost;
    public static String Money_earned;
    public static String Money_estimate;
    public static String Money_lines;
    public static String Money_onHand;
    public static String Money_overhead;
    public static String Money_price;
    public static String Money_prices;
    public static String Money_profit;
    public static String Money_quantity;
    public static String Money_quotes;
    public static String Money_source;
    public static String Money_sums;
    public static String Money_toBuy;
    public static String Money_unitPrice;
    public static String Money_window;
    public static String Money_windows;
    public static String Price_currency;
    public static String Price_energy;
    public static String Price_from;
    public static String Price_hour;
    public static String Price_labour;
    public static String Price_later;
    public static String Price_margin;
    public static String Price_name;
    public static String Price_ofCost;
    public static String Price_ofPrice;
    public static String Price_overhead;
    public static String Price_price;
    public static String Price_remove;
    public static String Price_tax;
    public static String Price_unit;
    public static String Quote_added;
    public static String Quote_change;
    public static String Quote_changeAsk;
    public static String Quote_dated;
    public static String Quote_done;
    public static String Quote_freeze;
    public static String Quote_freezeAsk;
    public static String Quote_number;
    public static String Quote_reason;
    public static String Quote_total;
    public static String Quote_until;
    public static String Wrong_day;
    public static String Wrong_price;
    public static String Wrong_share;

    static {
        NLS.initializeMessages("saddlebar.ui.glazing.messages", Messages.class);
    }

    private Messages() {
    }
}
