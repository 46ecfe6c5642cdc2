/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.editor.HullWordScanner.Kind;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.text.TextAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.ui.PlatformUI;

/**
 * The colours of .hull text. They are declared in plugin.xml, so a person can change them under Preferences, and the dark theme
 * has its own.
 */
final class HullColours {

	private static final String PREFIX = "hullwright.workbench.colour.";

	private HullColours() {
	}

	/** Whether a change of this preference changes how the text looks. */
	static boolean concerns(String property) {
		return property.startsWith(PREFIX);
	}

	static TextAttribute comment() {
		return new TextAttribute(colour("comment"), null, SWT.ITALIC);
	}

	static TextAttribute string() {
		return new TextAttribute(colour("string"));
	}

	static TextAttribute of(Kind kind) {
		return switch (kind) {
			case KEYWORD -> new TextAttribute(colour("keyword"), null, SWT.BOLD);
			case QUANTITY -> new TextAttribute(colour("quantity"));
			case DECLARED -> new TextAttribute(colour("declared"), null, SWT.BOLD);
			case PART -> new TextAttribute(colour("part"));
			case OPTION -> new TextAttribute(colour("option"), null, SWT.ITALIC);
			case OTHER -> new TextAttribute(null);
		};
	}

	private static Color colour(String name) {
		return registry().get(PREFIX + name);
	}

	static ColorRegistry registry() {
		return PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
	}
}
