"""A form of a page as a browser sends it where nobody typed anything (HTML, "constructing the entry list")."""

from html.parser import HTMLParser


class _Form(HTMLParser):
    def __init__(self, action: str) -> None:
        super().__init__()
        self.action, self.inside, self.given = action, False, dict[str, list[str]]()
        self.name, self.value = "", ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        had = dict(attrs)
        if tag == "form":
            self.inside = had.get("action") == self.action
        elif tag == "input" and had.get("name"):
            if had.get("type") not in ("checkbox", "radio") or "checked" in had:
                self.give(str(had["name"]), had.get("value") or "")
        elif tag in ("select", "textarea"):
            self.name, self.value = had.get("name") or "", ""
        elif tag == "option" and "selected" in had:
            self.value = had.get("value") or ""

    def handle_data(self, data: str) -> None:
        if self.lasttag == "textarea":
            self.value += data

    def handle_endtag(self, tag: str) -> None:
        if tag == "form":
            self.inside = False
        elif tag in ("select", "textarea") and self.name:
            self.give(self.name, self.value)
            self.name = ""

    def give(self, name: str, value: str) -> None:
        if self.inside:
            self.given.setdefault(name, []).append(value)


def filled_form(page: str, action: str) -> dict[str, list[str]]:
    """Return what the form with this action sends; a select whose first option is empty sends that where nothing is chosen."""
    form = _Form(action)
    form.feed(page)
    return form.given
