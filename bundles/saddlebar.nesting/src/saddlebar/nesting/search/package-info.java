/** What both searches share: how long they go on, and their dice. */
package saddlebar.nesting.search;
