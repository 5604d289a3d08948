/**
 * What stands on a page of the window: markup, the frame that is always in sight, forms. Knows no
 * server. May use what the window may use.
 */
package caryatid.web.page;
