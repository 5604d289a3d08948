'use strict';
// Sorts a table by the column whose heading is pressed; without script the order of the states stays.
document.querySelectorAll('table.sortable').forEach((table) => {
  const headings = [...table.tHead.rows[0].cells];
  const value = (row, column) => {
    const cell = row.cells[column];
    return cell.dataset.value ?? cell.textContent;
  };
  const compare = (a, b) => {
    const numbers = [Number(a), Number(b)];
    return numbers.every(Number.isFinite) ? numbers[0] - numbers[1] : a.localeCompare(b, undefined, { numeric: true });
  };
  headings.forEach((heading, column) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.append(...heading.childNodes);
    heading.append(button);
    button.addEventListener('click', () => {
      const sense = heading.getAttribute('aria-sort') === 'ascending' ? -1 : 1;
      headings.forEach((other) => other.removeAttribute('aria-sort'));
      heading.setAttribute('aria-sort', sense === 1 ? 'ascending' : 'descending');
      const rows = [...table.tBodies[0].rows];
      rows.sort((a, b) => sense * compare(value(a, column), value(b, column)));
      table.tBodies[0].append(...rows);
    });
  });
});
