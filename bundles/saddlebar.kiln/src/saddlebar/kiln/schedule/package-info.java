/** Schedules of segments, and temperature over time. */
package saddlebar.kiln.schedule;
