/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A finding that the yard lives with.
 *
 * @param rule the rule
 * @param element the qualified name of the element
 * @param reason why
 * @param until the last day on which it holds; forever, if empty
 * @param origin its place in the text
 */
public record Waiver(String rule, String element, String reason, Optional<LocalDate> until, Origin origin) {
}
