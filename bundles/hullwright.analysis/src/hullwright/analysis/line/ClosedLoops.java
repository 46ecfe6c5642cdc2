/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.analysis.wiring.Branches;
import hullwright.network.Join;
import hullwright.network.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the cables of a network that close a loop: what they join was joined already.
 */
public final class ClosedLoops {

	private final Map<String, Integer> pieceOfPart = new HashMap<>();
	private final List<Integer> joinedTo = new ArrayList<>();

	private ClosedLoops() {
	}

	/** The joins of a network that close a loop, in the order of the text. */
	public static List<Join> of(Network network) {
		ClosedLoops loops = new ClosedLoops();
		network.backbones().forEach(backbone -> {
			int piece = loops.newPiece();
			backbone.elements().forEach(element -> loops.pieceOfPart.put(element.name(), piece));
		});
		Branches branches = Branches.of(network);
		List<Join> closing = new ArrayList<>();
		for (Join join : network.joins()) {
			int from = loops.root(loops.piece(branches.backbonePart(join.from().part())));
			int to = loops.root(loops.piece(branches.backbonePart(join.to().part())));
			if (from == to) {
				closing.add(join);
			} else {
				loops.joinedTo.set(from, to);
			}
		}
		return List.copyOf(closing);
	}

	private int newPiece() {
		joinedTo.add(joinedTo.size());
		return joinedTo.size() - 1;
	}

	private int piece(String part) {
		return pieceOfPart.computeIfAbsent(part, each -> newPiece());
	}

	private int root(int piece) {
		int at = piece;
		while (joinedTo.get(at) != at) {
			at = joinedTo.get(at);
		}
		return at;
	}
}
