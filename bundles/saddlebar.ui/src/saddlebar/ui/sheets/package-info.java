/** The Sheets part of the Screen bench: what lies on each sheet, which side its toner touches, and what the printer does to it. */
package saddlebar.ui.sheets;
