/** What a laser printer makes of a page: a page to measure it with, and whether its toner is dense enough. */
package saddlebar.stencil.printer;
