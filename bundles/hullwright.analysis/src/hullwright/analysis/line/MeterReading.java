/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.Optional;

import hullwright.quantity.Resistance;

/**
 * What a meter shows across the signal pair at one end of a backbone with the power off: the terminators over the resistance of
 * the cables, with all nodes in parallel.
 *
 * @param part the qualified name of the part at that end
 * @param reading what it shows; nothing if the pair is open there
 * @param lowest what it shows if every node of unknown input resistance has the least that ISO 11898-2 allows (20 kohm, from memory)
 * @param highest what it shows if every such node has the most (100 kohm, from memory)
 */
public record MeterReading(String part, Optional<Resistance> reading, Optional<Resistance> lowest, Optional<Resistance> highest) {
}
