/**
 * A C3D file (c3d.org) to the force plates' channels in the laboratory's axes, to what it states of
 * the plates, and to the markers on the legs. Entry point: {@link
 * caryatid.recording.c3d.C3dReader}. May use {@code recording.model}, {@code recording.table},
 * {@code geometry} and {@code remark}.
 */
package caryatid.recording.c3d;
