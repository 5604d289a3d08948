package caryatid.clinic;

import java.time.LocalDate;

/**
 * An answer that holds for all stands of a wearer on one plate and one day.
 *
 * @param day the day
 * @param session a sum over wearer, day and plate description, which names none of them
 * @param answer the answer, as a sheet has it
 */
public record SessionAnswer(LocalDate day, String session, String answer) {}
