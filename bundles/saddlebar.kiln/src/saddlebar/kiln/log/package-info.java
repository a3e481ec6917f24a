/** What a kiln's logger wrote: read, cleaned, held against the schedule, and followed over months. */
package saddlebar.kiln.log;
