/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import java.util.List;
import java.util.Map;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;

/**
 * Statements that are offered whole, with places to fill in, where their first word may stand. The places are written as the
 * protocol's snippets are.
 */
final class WholeStatements {

	/**
	 * A statement.
	 *
	 * @param title what it is for
	 * @param text  its text, indented by tabs
	 */
	record Statement(String title, String text) {

		/** Its words up to the first place to fill in, and those of a condition. */
		String label() {
			String first = text.substring(0, Math.min(text.indexOf("${"), text.contains("{\n") ? text.indexOf("{\n") : Integer.MAX_VALUE)).strip();
			return first + " \u2026" + (text.contains(" when ") ? " when \u2026" : "");
		}
	}

	/** By the rule of the grammar and its first word. */
	private static final Map<String, List<Statement>> BY_PLACE = Map.of(
			"Series/series", List.of(new Statement("A series of boats with one network", """
					series ${1:Name} "${2:Title}" revision "${3:A}" {
						options {
							${4:autopilot} "${5:Autopilot}"
						}
						places {
							${6:helm} "${7:Helm}"
						}
						$0
					}""")),
			"DataNetwork/network", List.of(new Statement("A network with its backbone", """
					network ${1:instruments} of kind instrument bus {
						backbone of ${2:light} {
							terminator ${3:first} : ${4:endFemale} at ${5:helm}
							$0
							terminator ${6:last} : ${7:endMale} at ${8:helm}
						}
					}""")),
			"Drop/drop", List.of(new Statement("A drop with its device",
					"drop ${1:tee}.${2:1} via ${3:2} m of ${4:light} to ${5:name} : ${6:device} at ${7:helm}"),
					new Statement("A drop that only some boats have",
							"drop ${1:tee}.${2:1} via ${3:2} m of ${4:light} to ${5:name} : ${6:device} at ${7:helm} when ${8:option}, else prepared")),
			"Hull/hull", List.of(new Statement("A boat that is sold", "hull ${1:1} with ${2:option}")),
			"Series/options", List.of(new Statement("What can be ordered", """
					options {
						${1:autopilot} "${2:Autopilot}"
						one of ${3:singleEngine}, ${4:twinEngine}
					}""")),
			"Waiver/waive", List.of(new Statement("A finding that is accepted, and why",
					"waive ${1:cabling}/${2:drop-too-long} on ${3:network}.${4:device} because \"${5:reason}\" until ${6:2027-12-31}")),
			"SupplySource/supply", List.of(new Statement("A supply with its fuse and lead", """
					supply ${1:name} "${2:Title}" {
						from ${3:bank}
						fuse ${4:3} A
						lead ${5:2} m each way of ${6:1.5} mm2
					}""")));

	private WholeStatements() {
	}

	/** Those that begin with a word of the grammar. */
	static List<Statement> beginningWith(Keyword word) {
		return BY_PLACE.getOrDefault(GrammarUtil.containingRule(word).getName() + "/" + word.getValue(), List.of());
	}
}
