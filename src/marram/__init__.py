"""marram: the workbench of a golf rules official.

Facts of a situation → the ruling under an edition of the Rules → relief areas drawn to scale.

>>> from datetime import date
>>> import marram
>>> result = marram.rule("ball_moved_by_player", {}, played_on=date(2024, 5, 1))
>>> type(result).__name__
'NeedFacts'
"""

from typing import TYPE_CHECKING

from marram.lazy_names import on_first_use

if TYPE_CHECKING:
    from marram.rules.engine.request import rule
    from marram.rules.story.combine import combine
    from marram.rules.story.story import Happened, rule_situation, rule_story
    from marram.teach.what_changed.asking import changes

__version__ = "0.1.0"
__all__ = ["Happened", "__version__", "changes", "combine", "rule", "rule_situation", "rule_story"]

_WHERE = {
    "Happened": "rules.story.story",
    "changes": "teach.what_changed.asking",
    "combine": "rules.story.combine",
    "rule": "rules.engine.request",
    "rule_situation": "rules.story.story",
    "rule_story": "rules.story.story",
}

# So ``marram --help`` loads no Rule.
__getattr__ = on_first_use(__name__, _WHERE)
