package org.brakerules.model.decision;

/**
 * Which rule base decided.
 *
 * @param version the version of the published artifact
 * @param fingerprint SHA-256 of rules, limits, points and sources, in hexadecimal
 */
public record RuleBaseVersion(String version, String fingerprint) {}
