import { mount } from 'svelte';
import App from './App.svelte';
import Local from './app/Local.svelte';
import type { Study } from './study';
import './style.css';

/** The one bundle has two hosts: the app, which says so, and the report, which carries its study inside. */
const inApp = document.querySelector('meta[name="platewright-host"]') !== null;
const target = document.getElementById('page')!;

function mountReport() {
  const text = document.getElementById('study')!.textContent!;
  const study = JSON.parse(text) as Study;
  document.title = `${study.name} · Platewright`;
  mount(App, { target, props: { study } });
}

if (inApp) mount(Local, { target });
else mountReport();
