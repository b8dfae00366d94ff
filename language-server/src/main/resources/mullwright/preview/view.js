// Zoom and pan of one drawing, by its view box.

const STEP = 1.25;
const DEEPEST = 60;

/** Letters of marks, 2.5 high on paper, are read from so many units to a pixel; above, they are fog. */
const FAR = 0.7;

export class View {
  constructor(svg) {
    this.svg = svg;
    this.all = null;
    this.box = null;
    this.moved = false;
    this.far = false;
    this.size = { width: 0, height: 0 };
    // told, not asked for: to be asked the browser lays out what may be about to be replaced
    new ResizeObserver(([seen]) => {
      this.size = seen.contentRect;
      this.show();
    }).observe(svg);
    svg.addEventListener("wheel", (event) => this.wheel(event), { passive: false });
    svg.addEventListener("pointerdown", (event) => this.press(event));
  }

  /** The drawing takes that room now; whoever looks at all of it goes on doing so. */
  frame(words) {
    const [x, y, width, height] = words.split(" ").map(Number);
    this.all = { x, y, width, height };
    if (!this.moved || !this.box) {
      this.fit();
    } else {
      this.show();
    }
  }

  fit() {
    if (this.all) {
      this.box = { ...this.all };
      this.moved = false;
      this.show();
    }
  }

  /** Units of the drawing to one pixel. */
  unit() {
    const { width, height } = this.size;
    return width && height && this.box
      ? Math.max(this.box.width / width, this.box.height / height)
      : 1;
  }

  show() {
    if (this.box) {
      const { x, y, width, height } = this.box;
      this.svg.setAttribute("viewBox", `${x} ${y} ${width} ${height}`);
      const unit = this.unit();
      // only where it is used: a value that is inherited is worked out anew for all below
      for (const part of this.svg.querySelectorAll("[data-sized]")) {
        part.style.setProperty("--unit", unit);
      }
      if (unit > FAR !== this.far) {
        this.far = unit > FAR;
        this.svg.dispatchEvent(new Event("distance"));
      }
    }
  }

  zoom(by, point) {
    if (!this.box) {
      return;
    }
    const width = this.box.width / by;
    if (width > this.all.width * 4 || width < this.all.width / DEEPEST) {
      return;
    }
    const at = point ?? { x: this.box.x + this.box.width / 2, y: this.box.y + this.box.height / 2 };
    this.box = {
      x: at.x - (at.x - this.box.x) / by,
      y: at.y - (at.y - this.box.y) / by,
      width,
      height: this.box.height / by,
    };
    this.moved = true;
    this.show();
  }

  in() {
    this.zoom(STEP);
  }

  out() {
    this.zoom(1 / STEP);
  }

  /** By shares of what is seen. */
  pan(right, down) {
    if (this.box) {
      this.box.x += right * this.box.width;
      this.box.y += down * this.box.height;
      this.moved = true;
      this.show();
    }
  }

  /** Moves so that an element is seen, if it is not. */
  reveal(element) {
    const seen = this.svg.getBoundingClientRect();
    const there = element.getBoundingClientRect();
    const outside =
      there.right < seen.left || there.left > seen.right || there.bottom < seen.top || there.top > seen.bottom;
    if (outside && this.box) {
      const unit = this.unit();
      this.box.x += ((there.left + there.right) / 2 - (seen.left + seen.right) / 2) * unit;
      this.box.y += ((there.top + there.bottom) / 2 - (seen.top + seen.bottom) / 2) * unit;
      this.moved = true;
      this.show();
    }
  }

  point(event) {
    const inverse = this.svg.getScreenCTM()?.inverse();
    return inverse && new DOMPoint(event.clientX, event.clientY).matrixTransform(inverse);
  }

  wheel(event) {
    event.preventDefault();
    this.zoom(Math.pow(STEP, -event.deltaY / 120), this.point(event));
  }

  press(event) {
    if (event.button !== 0 || !this.box) {
      return;
    }
    const from = { x: event.clientX, y: event.clientY, box: { ...this.box } };
    let dragged = false;
    const move = (to) => {
      const dx = to.clientX - from.x;
      const dy = to.clientY - from.y;
      if (!dragged && Math.hypot(dx, dy) > 4) {
        dragged = true;
        this.svg.setPointerCapture(event.pointerId);
        this.svg.classList.add("dragged");
      }
      if (dragged) {
        const unit = this.unit();
        this.box = { ...from.box, x: from.box.x - dx * unit, y: from.box.y - dy * unit };
        this.moved = true;
        this.show();
      }
    };
    const up = () => {
      this.svg.removeEventListener("pointermove", move);
      // after the click that a drag ends with, which is meant for nothing
      setTimeout(() => this.svg.classList.remove("dragged"));
    };
    this.svg.addEventListener("pointermove", move);
    this.svg.addEventListener("pointerup", up, { once: true });
    this.svg.addEventListener("pointercancel", up, { once: true });
  }
}
