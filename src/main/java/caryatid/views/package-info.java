/**
 * What a fitting record shows: what is set now, how each offset went, what was changed, what is
 * open, what to warn of, how two states differ. Entry point: {@link caryatid.views.RecordView}.
 * Pure; may use {@code fitting} and what it uses, not the store.
 */
package caryatid.views;
