/**
 * What an export was read into and what describes it: a recording in millimetres, newtons, seconds
 * and the person's frame, with its provenance; plate descriptions; what an inspection tells; the
 * topics of problems and remarks. May use {@code geometry} and {@code remark}.
 */
package caryatid.recording.model;
