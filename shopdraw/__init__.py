"""Working drawings for furniture makers: from a piece file to boards, joints, sheets, templates and lists."""

__version__ = "0.1.0"
