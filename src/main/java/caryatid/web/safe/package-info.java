/**
 * Who may ask the window for something: the guard of its requests, its token, and the files by
 * which its owner, and a second start, find it. Entry points: {@link caryatid.web.safe.Guard},
 * {@link caryatid.web.safe.WindowLock}. May use {@code remark} and the JDK's server.
 */
package caryatid.web.safe;
