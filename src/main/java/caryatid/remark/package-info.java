/**
 * What the program has to say, as data: problems that stop a run and remarks that go with a result.
 *
 * <p>Every package states its own topics as an enum that implements {@link caryatid.remark.Topic};
 * the sentence for a topic is kept by {@code wording}. Uses the JDK only.
 */
package caryatid.remark;
