package caryatid.clinic;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The torque that a component's maker recommends for one of its fasteners.
 *
 * @param what which part the component is
 * @param name what it is called
 * @param fastener which fastener
 * @param torqueNm the torque, N m
 * @param source the document that says so
 */
public record PartTorque(
    String what, String name, String fastener, BigDecimal torqueNm, Optional<String> source) {}
