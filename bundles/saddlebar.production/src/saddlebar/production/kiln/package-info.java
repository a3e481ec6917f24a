/** Where the studio's kilns, schedules, glasses and records meet the physics of the kiln. */
package saddlebar.production.kiln;
