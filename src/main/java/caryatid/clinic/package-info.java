/**
 * What belongs to the clinic and not to a wearer, on the disk beside the records: plate
 * descriptions, found by the columns of an export, and components with their makers' limits. Entry
 * points: {@link caryatid.clinic.ClinicFile}, {@link caryatid.clinic.Clinic}. May use {@code
 * format} and what it uses, and {@code disk}.
 */
package caryatid.clinic;
