/** What a studio learns of itself: tone calibrations from printed wedges, and what its printers do to a page. */
package saddlebar.production.studio;
