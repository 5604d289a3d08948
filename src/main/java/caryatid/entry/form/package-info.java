/**
 * What each kind of entry is asked for, once for JSON, YAML, command line and terminal, and what
 * was answered. Entry points: {@link caryatid.entry.form.EntryForms}, {@link
 * caryatid.entry.form.FormReader}. Pure; may use {@code entry} and what it uses.
 */
package caryatid.entry.form;
