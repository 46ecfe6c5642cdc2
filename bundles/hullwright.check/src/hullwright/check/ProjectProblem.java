/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

/**
 * What can be wrong with a project as a whole. The ids never change.
 */
public final class ProjectProblem {

	/** A file cannot be read: missing rights, too large, a link out of the project. */
	public static final String FILE_UNREADABLE = "project/file-unreadable";
	/** A file is no text in UTF-8. */
	public static final String NOT_TEXT = "project/not-text";
	/** A project has more than one profile. */
	public static final String TWO_PROFILES = "project/two-profiles";
	/** A profile sets something that does not exist or does not fit. */
	public static final String PROFILE_SETTING_WRONG = "project/profile-setting-wrong";
	/** A waiver names a rule that does not exist. */
	public static final String WAIVER_UNKNOWN_RULE = "project/waiver-unknown-rule";
	/** A waiver gives no reason. */
	public static final String WAIVER_WITHOUT_REASON = "project/waiver-without-reason";
	/** The last day of a waiver has passed. */
	public static final String WAIVER_EXPIRED = "project/waiver-expired";
	/** A waiver is about nothing that is found. */
	public static final String WAIVER_UNUSED = "project/waiver-unused";
	/** The baseline accepts a finding that is no longer made. */
	public static final String BASELINE_STALE = "project/baseline-stale";
	/** Nobody trusts a plugin, so its rules do not run. */
	public static final String PLUGIN_OFF = "project/plugin-off";
	/** A jar among the plugins cannot be used. */
	public static final String PLUGIN_REFUSED = "project/plugin-refused";
	/** A rule failed and has been switched off. */
	public static final String RULE_FAILED = "project/rule-failed";

	private ProjectProblem() {
	}
}
