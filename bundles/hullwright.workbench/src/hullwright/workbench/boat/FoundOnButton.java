/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.lang.ide.AllBoats;
import hullwright.lang.ide.Tally;
import hullwright.report.CountsText;
import hullwright.rules.Severity;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

/**
 * Tells on the button of a hull or an option what was found on it.
 */
final class FoundOnButton {

	private final Button button;
	private final String name;
	private final Function<AllBoats, Optional<Tally>> look;
	private String tip;

	/** @param look finds what is to be told; a button with nothing to tell is as it was */
	FoundOnButton(Button button, Function<AllBoats, Optional<Tally>> look) {
		this.button = button;
		this.look = look;
		name = button.getText();
	}

	/** @return whether the button needs another size now */
	boolean show(AllBoats all) {
		Optional<Tally> tally = look.apply(all).filter(each -> each.worst().isPresent());
		String text = tally.map(each -> name + " – " + CountsText.of(each::count)).orElse(name);
		if (text.equals(button.getText())) {
			return false;
		}
		if (tip == null) {
			tip = button.getToolTipText();
		}
		button.setText(text);
		button.setImage(tally.flatMap(Tally::worst).map(FoundOnButton::image).orElse(null));
		button.setToolTipText(tally.map(each -> tip + "\n" + CountsText.of(each::count)).orElse(tip));
		return true;
	}

	/** The window's own sign for a severity. */
	static Image image(Severity severity) {
		return PlatformUI.getWorkbench().getSharedImages().getImage(switch (severity) {
			case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
			case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
			case ADVICE -> ISharedImages.IMG_OBJS_INFO_TSK;
		});
	}
}
