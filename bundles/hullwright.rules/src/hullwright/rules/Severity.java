/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.Locale;

/**
 * How much a finding weighs. Ordered: what comes later weighs more.
 */
public enum Severity {
	/** Worth a thought; the boat works. */
	ADVICE,
	/** Likely to cause trouble, or against common practice. */
	WARNING,
	/** Breaks a published limit, or the boat will not work. */
	ERROR;

	/** The word for it in reports. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
