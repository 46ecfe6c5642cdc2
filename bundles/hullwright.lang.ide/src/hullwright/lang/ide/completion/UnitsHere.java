/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.quantity.Dimension;
import hullwright.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;

/**
 * The units that can stand behind a number: those of the quantity that the grammar expects there.
 */
final class UnitsHere {

	private static final Map<String, List<Dimension>> BY_RULE = Map.ofEntries(
			Map.entry("Length", List.of(Dimension.LENGTH)),
			Map.entry("Voltage", List.of(Dimension.VOLTAGE)),
			Map.entry("Current", List.of(Dimension.CURRENT)),
			Map.entry("LoadAmount", List.of(Dimension.CURRENT, Dimension.POWER)),
			Map.entry("Duration", List.of(Dimension.DURATION)),
			Map.entry("BitRate", List.of(Dimension.BIT_RATE)),
			Map.entry("Resistance", List.of(Dimension.RESISTANCE)),
			Map.entry("ResistancePerLength", List.of(Dimension.RESISTANCE_PER_LENGTH)),
			Map.entry("DelayPerLength", List.of(Dimension.DELAY_PER_LENGTH)),
			Map.entry("ConductorSize", List.of(Dimension.CONDUCTOR_SIZE)),
			Map.entry("Efficiency", List.of(Dimension.RATIO)));

	private UnitsHere() {
	}

	/** The units behind the number that this node belongs to; none if it is no quantity. */
	static List<Unit> behind(INode number) {
		String written = number == null ? "" : number.getText();
		if (written.isEmpty() || !Character.isDigit(written.charAt(written.length() - 1))) {
			return List.of();
		}
		for (INode node = number; node != null; node = node.getParent()) {
			if (node.getGrammarElement() instanceof RuleCall call && BY_RULE.containsKey(call.getRule().getName())) {
				List<Dimension> dimensions = BY_RULE.get(call.getRule().getName());
				return Arrays.stream(Unit.values()).filter(unit -> dimensions.contains(unit.dimension())).toList();
			}
		}
		return List.of();
	}
}
