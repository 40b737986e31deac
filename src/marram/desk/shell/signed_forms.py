"""Every form that changes something carries the signature of the device: put in where templates are read, so that none is forgotten."""

import re

from fastapi import Request
from jinja2.ext import Extension
from markupsafe import Markup

from marram.desk.people.who import SIGNED_BY, who_asks

FORM = re.compile(r'<form\b[^>]*\bmethod="post"[^>]*>')


class SignedForms(Extension):
    """Jinja's reading of a template, with the signature behind the start of every form that is posted."""

    def preprocess(self, source: str, name: str | None, filename: str | None = None) -> str:  # noqa: ARG002 - Jinja's
        """Return the source of a template with signed forms."""
        return FORM.sub(r"\g<0>{{ signed_form(request) }}", source)


def signed_form(request: Request) -> Markup:
    """Return the hidden field of a form; nothing at an open desk, where nobody is signed in."""
    signature = who_asks(request).signature
    return (
        Markup('<input type="hidden" name="{}" value="{}">').format(SIGNED_BY, signature)
        if signature
        else Markup()
    )
