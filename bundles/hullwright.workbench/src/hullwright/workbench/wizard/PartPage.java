/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.check.Addition;
import hullwright.check.CatalogInText;
import hullwright.check.FileLayout;
import hullwright.check.Snapshot;
import hullwright.lang.ide.starter.Names;
import hullwright.lang.ide.starter.PartKind;
import hullwright.lang.ide.starter.StarterPart;
import hullwright.workbench.live.ProjectText;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/**
 * Asks for a part of a catalog of the house: what it is, its connectors and the values without which it says too little.
 */
final class PartPage extends ReadingPage<List<CatalogInText>> {

	private static final String NEW_FILE = "house-parts.hull";
	/** What the standard catalog offers to a file that imports it. */
	private static final List<String> STANDARD_FAMILIES = List.of("micro", "mini");

	private Combo catalog;
	private Combo kind;
	private Text name;
	private Text title;
	private Combo family;
	private Composite asked;
	private final Map<String, Control> values = new HashMap<>();
	private Text article;
	private Text source;

	PartPage(Optional<IResource> chosen) {
		super("part", "New catalog part", "A part that this yard uses, with the figures of its data sheet.", chosen);
	}

	@Override
	void createMore(Composite parent) {
		catalog = combo("Catalog", List.of());
		catalog.addListener(SWT.Selection, event -> {
			fillFamilies();
			changed();
		});
		kind = combo("Kind", Arrays.stream(PartKind.values()).map(PartKind::label).toList());
		kind.addListener(SWT.Selection, event -> ask());
		name = text("Name", "newPart", "How texts refer to it");
		title = text("Title", "", "What people call it");
		family = combo("Connectors", STANDARD_FAMILIES);
		labelOfHigh(parent, "Values");
		asked = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).spacing(12, 6).applyTo(asked);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(asked);
		article = text("Article number", "", "Under which it is bought");
		source = text("Source", "", "Where the values were read, such as the data sheet with its page");
		ask();
	}

	private PartKind kind() {
		return PartKind.values()[kind.getSelectionIndex()];
	}

	private void ask() {
		for (Control child : asked.getChildren()) {
			child.dispose();
		}
		values.clear();
		for (PartKind.Value value : kind().asked()) {
			label(asked, value.label());
			values.put(value.key(), value.choices().isEmpty() ? written(value) : chosenAmong(value));
		}
		family.setEnabled(kind().hasConnectors());
		asked.requestLayout();
		if (getControl() != null && getControl() instanceof Composite page) {
			page.layout(true, true);
		}
		changed();
	}

	private Text written(PartKind.Value value) {
		Text text = new Text(asked, SWT.BORDER);
		text.setText(value.usual());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		text.addModifyListener(event -> changed());
		return text;
	}

	private Combo chosenAmong(PartKind.Value value) {
		Combo combo = new Combo(asked, SWT.READ_ONLY);
		combo.setItems(value.choices().contains(PartKind.Value.FAMILIES) ? family.getItems() : value.choices().toArray(String[]::new));
		combo.select(Math.min(combo.getItemCount() - 1, value.choices().contains(PartKind.Value.FAMILIES) ? 1 : 0));
		combo.addModifyListener(event -> changed());
		return combo;
	}

	@Override
	List<CatalogInText> look(Snapshot snapshot) {
		// a catalog that can name no connectors could hold no part that has some
		return ProjectText.engine().texts().catalogs(snapshot);
	}

	@Override
	void fill(Read<List<CatalogInText>> found) {
		List<String> choices = new ArrayList<>(found.found().stream().map(each -> each.name() + " (" + each.file() + ")").toList());
		choices.add("A new catalog (" + newFile().getName() + ")");
		catalog.setItems(choices.toArray(String[]::new));
		catalog.select(0);
		fillFamilies();
	}

	private void fillFamilies() {
		String before = family.getText();
		family.setItems(wanted().map(each -> new TreeSet<>(each.families())).filter(each -> !each.isEmpty()).orElseGet(() -> new TreeSet<>(STANDARD_FAMILIES))
				.toArray(String[]::new));
		family.select(Math.max(0, Math.max(family.indexOf(before), family.indexOf("micro"))));
		ask();
	}

	/** The catalog that it goes into; empty for a new one. */
	private Optional<CatalogInText> wanted() {
		List<CatalogInText> found = read().found();
		int at = catalog.getSelectionIndex();
		return at >= 0 && at < found.size() ? Optional.of(found.get(at)) : Optional.empty();
	}

	/** The file of a new catalog. */
	IFile newFile() {
		IFile file = project().getFile(NEW_FILE);
		for (int number = 2; file.exists(); number++) {
			file = project().getFile(NEW_FILE.replace(".hull", "-" + number + ".hull"));
		}
		return file;
	}

	@Override
	Optional<String> problem(Read<List<CatalogInText>> found) {
		return Names.problem("The part", name.getText().strip())
				.or(() -> wanted().filter(each -> each.names().contains(name.getText().strip()))
						.map(each -> "The catalog " + each.name() + " has a part '" + name.getText().strip() + "' already. Take another name."))
				.or(() -> wanted().filter(each -> kind().hasConnectors() && each.families().isEmpty())
						.map(each -> "The catalog " + each.name() + " knows no connectors. Write import \"standard:parts\" at the head of " + each.file() + "."))
				.or(() -> values.values().stream().anyMatch(each -> each instanceof Text text && text.getText().isBlank())
						? Optional.of("Each value is needed; the data sheet of the part has them.")
						: Optional.empty())
				.or(this::notUnderstood);
	}

	/** What the language says of the values. */
	private Optional<String> notUnderstood() {
		FileLayout layout = FileLayout.of(new Snapshot.FileContent(part().file("Kit", "").getBytes(StandardCharsets.UTF_8), Optional.empty()));
		return layout.problems().stream().findFirst().map(FileLayout.Problem::message);
	}

	private StarterPart part() {
		Map<String, String> stated = new HashMap<>();
		values.forEach((key, control) -> stated.put(key, control instanceof Text text ? text.getText() : ((Combo) control).getText()));
		return new StarterPart(kind(), name.getText().strip(), title.getText(), family.getText(), stated, article.getText(), source.getText());
	}

	@Override
	Map<String, String> texts() {
		return wanted().map(each -> Map.of(each.file(), part().statement())).orElseGet(() -> Map.of(newFile().getName(), newCatalog()));
	}

	/** The text of a new catalog with the part. */
	String newCatalog() {
		long taken = read().found().stream().filter(each -> each.name().startsWith("HouseParts")).count();
		return part().file("HouseParts" + (taken == 0 ? "" : taken + 1), "Parts that the yard uses");
	}

	/** The part as something that is added to a catalog; empty for a new catalog. */
	Optional<Addition> addition() {
		return wanted().map(each -> new Addition(Addition.Kind.PART, each.origin(), part().statement()));
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			name.setFocus();
			name.selectAll();
		}
	}
}
