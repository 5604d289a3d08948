/**
 * Measuring the clinic's own doubts: proving a plate, the hand that marks, the turn of the feet.
 * Entry points: {@link caryatid.usecase.prove.ProvePlate}.
 */
package caryatid.usecase.prove;
